package dev.poleward.service.journal;

import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.record.Sealed;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** Entries for tests. */
final class Entries {

  private static final AtomicInteger CLUBS = new AtomicInteger();

  private Entries() {}

  /** A club that no other test uses. */
  static String aClub() {
    return "club-" + CLUBS.incrementAndGet();
  }

  /** A club that no other test uses, in another partition. */
  static String aClubElsewhere(String club) {
    return Stream.generate(Entries::aClub)
        .filter(each -> Partitioning.partitionOf(each) != Partitioning.partitionOf(club))
        .findFirst()
        .orElseThrow();
  }

  static Entry entry(String club, int id) {
    return new Entry(
        club,
        new Envelope(
            Integer.toString(id),
            "//phone/ann",
            OffsetDateTime.parse("2026-05-01T18:30:00+02:00"),
            null,
            null,
            Map.of()),
        "rep.logged.v1",
        "{\"dog\":\"d1\",\"outcome\":\"clean\",\"session\":\"s1\"}",
        null,
        Instant.parse("2026-05-01T16:30:01.5Z"),
        false);
  }

  static Entry withData(String club, String data) {
    var bare = entry(club, 1);
    return new Entry(
        club, bare.envelope(), bare.type(), data, null, bare.recorded(), bare.recordedGiven());
  }

  /** An entry that uses all that an entry can have. */
  static Entry withEverything(String club) {
    return new Entry(
        club,
        new Envelope(
            "a/b c-ü-🐕",
            "urn:timer:7",
            OffsetDateTime.parse("2026-05-01T18:30:00.123456789-03:30"),
            "dogs/d1",
            "https://example.org/schemas/dog.registered.v1",
            Map.of(
                "trace",
                "00-ab",
                "retry",
                3,
                "sequence",
                9_000_000_000L,
                "offline",
                true,
                "digits",
                "17",
                "empty",
                "")),
        "dog.registered.v1",
        "{\"name\":\"Füchsin 🦊\"}",
        new Sealed("p-ann", "k1", "bm90IGEgcmVhbCBib3g"),
        Instant.parse("2026-05-02T00:00:00.000001Z"),
        true);
  }
}
