package dev.poleward.domain.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;
import dev.poleward.domain.event.ClubEvent.AccessKeyRevoked;
import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.ClubEvent.ClubSettingsChanged;
import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.event.RegistryEvent.HandlerRegistered;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigestTest {

  private static final Instant TIME = Instant.parse("2026-05-04T17:02:11Z");

  /** FIPS 180-4's digest of no bytes. */
  @Test
  void nothingHasTheDigestOfNothing() {
    Digest digest = new Digest();

    assertThat(digest.events()).isZero();
    assertThat(digest.value())
        .isEqualTo("sha256:e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  }

  /**
   * Computed with coreutils' sha256sum from these lines, each ended by LF:
   *
   * <pre>
   * 0 dog.registered.v1 2026-05-04T17:02:11Z {"callName":"Wäller","dog":"juniper"}
   * A~ session.opened.v1 2026-05-04T17:02:11.5Z {"session":"s-1"}
   * a setup.changed.v1 2026-05-04T17:02:11.000000001Z {"session":"s-1","setup":{"poles":4}}
   * a-1 event.withdrawn.v1 1999-12-31T23:59:59Z {"event":"a","reason":"x"}
   * </pre>
   */
  @Test
  void itIsTheSha256OfItsLines() {
    Digest digest = new Digest();
    digest.add("0", "dog.registered.v1", TIME, "{\"callName\":\"Wäller\",\"dog\":\"juniper\"}");
    digest.add("A~", "session.opened.v1", TIME.plusMillis(500), "{\"session\":\"s-1\"}");
    digest.add(
        "a",
        "setup.changed.v1",
        TIME.plusNanos(1),
        "{\"session\":\"s-1\",\"setup\":{\"poles\":4}}");
    digest.add(
        "a-1",
        "event.withdrawn.v1",
        Instant.parse("1999-12-31T23:59:59Z"),
        "{\"event\":\"a\",\"reason\":\"x\"}");

    assertThat(digest.events()).isEqualTo(4);
    assertThat(digest.value())
        .isEqualTo("sha256:028349eebd91a05b6254325f3fd25e74bbd0e55e66d13ce80a4d51ac0b748385");
  }

  @ParameterizedTest
  @CsvSource({
    "2026-05-04T18:02:11+01:00, 2026-05-04T17:02:11Z",
    "2026-05-04T17:02:00Z, 2026-05-04T17:02:00Z",
    "2026-05-04T17:02:11.500Z, 2026-05-04T17:02:11.5Z",
    "2026-05-04T17:02:11.050Z, 2026-05-04T17:02:11.05Z",
    "2026-05-04T17:02:11.000100Z, 2026-05-04T17:02:11.0001Z",
    "2026-05-04T17:02:11.123456789Z, 2026-05-04T17:02:11.123456789Z",
    "2026-05-04T17:02:11.100000000Z, 2026-05-04T17:02:11.1Z",
    "2026-05-04T17:02:10.000000010Z, 2026-05-04T17:02:10.00000001Z",
    "1900-01-01T00:00:00Z, 1900-01-01T00:00:00Z",
  })
  void timesAreWrittenInUtcAsShortAsTheyCanBe(String said, String written) {
    assertThat(Digest.written(OffsetDateTime.parse(said).toInstant())).isEqualTo(written);
  }

  @Test
  void anythingElseIsAnotherDigest() {
    List<String> values =
        List.of(
            one("a", "t.v1", TIME, "{}"),
            one("b", "t.v1", TIME, "{}"),
            one("a", "t.v2", TIME, "{}"),
            one("a", "t.v1", TIME.plusNanos(1), "{}"),
            one("a", "t.v1", TIME, "{\"a\":1}"));

    assertThat(values).doesNotHaveDuplicates();
  }

  private static String one(String id, String type, Instant time, String data) {
    Digest digest = new Digest();
    digest.add(id, type, time, data);
    return digest.value();
  }

  @Test
  void idsAscendAndComeOnce() {
    Digest digest = new Digest();
    digest.add("b", "t.v1", TIME, "{}");

    assertThatIllegalArgumentException().isThrownBy(() -> digest.add("b", "t.v1", TIME, "{}"));
    assertThatIllegalArgumentException().isThrownBy(() -> digest.add("a", "t.v1", TIME, "{}"));
    assertThat(digest.events()).isEqualTo(1);
  }

  /** So that ids in ascending order are lines in ascending order. */
  @Test
  void aSpaceSortsBelowEveryCharacterOfAnId() {
    String characters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789._~-";

    assertThat(IntStream.range(0, characters.length()).mapToObj(characters::charAt))
        .allSatisfy(character -> assertThat(character).isGreaterThan(' '));
  }

  @Test
  void clubsKeysAndForgettingsAreLeftOut() {
    assertThat(
            List.of(
                new ClubRegistered("saltmarsh", "Saltmarsh", "Europe/Lisbon", null, null),
                new ClubSettingsChanged("Saltmarsh", null, null, null),
                new AccessKeyIssued("k-1", List.of(), null, null, ""),
                new AccessKeyRevoked("k-1"),
                new PersonForgotten("robin")))
        .noneMatch(Digest::covers);
    assertThat(Digest.covers(new HandlerRegistered("robin"))).isTrue();
    assertThat(Digest.covers(new EventWithdrawn("a", "x"))).isTrue();
    assertThat(Digest.covers(new PlanIssued("l-1", "juniper", Map.of()))).isTrue();
  }
}
