package dev.poleward.service.projection;

import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.history.RecordedEvent;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.codec.Upcasters;
import dev.poleward.service.journal.Entry;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Entries for the journal, made of the events of a history, and the ways in which they may come.
 */
public final class HistoryEntries {

  /** Today's types, and no older ones. */
  public static final EventCodec CODEC = new EventCodec(Upcasters.NONE);

  private HistoryEntries() {}

  /** An entry for each event, recorded when the event says so. */
  public static List<Entry> of(String club, List<RecordedEvent> events) {
    return events.stream().map(event -> of(club, event)).toList();
  }

  /** The entry of an event, recorded when the event says so. */
  public static Entry of(String club, RecordedEvent event) {
    return new Entry(
        club,
        wordier(event.envelope()),
        EventCodec.typeOf(event.event()),
        CanonicalJson.of(CODEC.encode(event.event())),
        event.sealed(),
        event.recorded(),
        true);
  }

  /** With a subject here and an extension there, which follow from the id. */
  private static Envelope wordier(Envelope bare) {
    int choice = Math.floorMod(bare.id().hashCode(), 12);
    return new Envelope(
        bare.id(),
        bare.source(),
        bare.time(),
        choice % 3 == 0 ? "dogs/" + choice : null,
        choice % 4 == 0 ? "https://example.org/schemas/" + choice : null,
        choice % 2 == 0
            ? Map.of("zone", "field " + choice, "attempt", (Object) (long) choice, "offline", true)
            : Map.of());
  }

  /** The same in any order, some more than once, as phones that buffer and retry bring them. */
  public static List<Entry> shuffled(List<Entry> entries, Random random) {
    List<Entry> muddled = new ArrayList<>(entries);
    int repeats = random.nextInt(1 + entries.size());
    for (int i = 0; i < repeats; i++) {
      muddled.add(entries.get(random.nextInt(entries.size())));
    }
    Collections.shuffle(muddled, random);
    return muddled;
  }

  /** The same shuffled, now and then with their time told in another offset. */
  public static List<Entry> muddled(List<Entry> entries, Random random) {
    List<Entry> muddled = shuffled(entries, random);
    muddled.replaceAll(entry -> random.nextInt(5) == 0 ? elsewhere(entry, random) : entry);
    return muddled;
  }

  private static Entry elsewhere(Entry entry, Random random) {
    Envelope said = entry.envelope();
    ZoneOffset offset = ZoneOffset.ofTotalSeconds(900 * (random.nextInt(97) - 48));
    Envelope envelope =
        new Envelope(
            said.id(),
            said.source(),
            said.time().withOffsetSameInstant(offset),
            said.subject(),
            said.dataschema(),
            said.extensions());
    return new Entry(
        entry.club(),
        envelope,
        entry.type(),
        entry.data(),
        entry.sealed(),
        entry.recorded(),
        entry.recordedGiven());
  }

  /**
   * What several clubs send, in the order in which the journal may hold it, cut into batches as the
   * fold may come to read it.
   */
  public static List<List<Entry>> inBatches(List<List<Entry>> ofClubs, Random random) {
    List<Integer> turns = new ArrayList<>();
    IntStream.range(0, ofClubs.size())
        .forEach(club -> turns.addAll(Collections.nCopies(ofClubs.get(club).size(), club)));
    Collections.shuffle(turns, random);
    int[] next = new int[ofClubs.size()];
    List<List<Entry>> batches = new ArrayList<>();
    List<Entry> batch = new ArrayList<>();
    int room = room(random);
    for (int club : turns) {
      batch.add(ofClubs.get(club).get(next[club]++));
      if (batch.size() == room) {
        batches.add(List.copyOf(batch));
        batch.clear();
        room = room(random);
      }
    }
    if (!batch.isEmpty()) {
      batches.add(batch);
    }
    return batches;
  }

  /** One at a time, a few, or everything at once. */
  private static int room(Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> 1;
      case 1 -> 1 + random.nextInt(20);
      default -> 1_000;
    };
  }
}
