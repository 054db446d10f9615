package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.history.EveryAnswer;
import dev.poleward.domain.history.GeneratedHistory;
import dev.poleward.domain.record.View;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.JournalRecord;
import dev.poleward.service.journal.MemoryJournal;
import dev.poleward.service.journal.Tail;
import dev.poleward.service.projection.Reading.Fate;
import dev.poleward.service.projection.Reading.FeedEvent;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A journal with generated histories of several clubs, repeats and contradictions among them, and
 * what the rows of it must answer. For one thread.
 */
final class TrainingTold {

  private static final Duration LONG = Duration.ofSeconds(20);

  final MemoryJournal journal = new MemoryJournal();
  private final List<String> clubs = new ArrayList<>();

  /** Tells of that many clubs. */
  TrainingTold(int clubs, long seed) {
    Random random = new Random(seed);
    List<List<Entry>> sent = new ArrayList<>();
    for (int i = 0; i < clubs; i++) {
      String club = "club-" + i;
      this.clubs.add(club);
      List<Entry> entries =
          HistoryEntries.of(club, GeneratedHistory.withInternalEvents(seed + i).events());
      List<Entry> muddled = HistoryEntries.muddled(entries, random);
      muddled.add(contradicting(muddled.getFirst()));
      sent.add(muddled);
    }
    for (List<Entry> batch : HistoryEntries.inBatches(sent, random)) {
      batch.forEach(entry -> journal.append(List.of(entry), LONG));
    }
  }

  private static Entry contradicting(Entry entry) {
    return Sent.event(entry.envelope().id()).of(entry.club()).entry();
  }

  /** Everything from these offsets on, cut into batches as a reader of the topic gets them. */
  List<List<JournalRecord>> batchesFrom(long[] next, Random random) {
    List<JournalRecord> rest = new ArrayList<>();
    try (Tail tail = journal.tail(IntStream.range(0, next.length).boxed().toList(), next)) {
      List<JournalRecord> polled = tail.poll(Duration.ZERO);
      while (!polled.isEmpty()) {
        rest.addAll(polled);
        polled = tail.poll(Duration.ZERO);
      }
    }
    List<List<JournalRecord>> batches = new ArrayList<>();
    for (int from = 0; from < rest.size(); ) {
      int to = Math.min(rest.size(), from + 1 + random.nextInt(30));
      batches.add(rest.subList(from, to));
      from = to;
    }
    return batches;
  }

  /** Goes on from where the rows are, up to the end. */
  void applyTo(FoldedRows rows, Random random) {
    batchesFrom(rows.next(), random).forEach(rows::applyRecords);
  }

  /** All that is kept of each club: had one record been applied twice or never, it would show. */
  Map<String, Object> kept(ClubReader reader) {
    Map<String, Object> kept = new LinkedHashMap<>();
    for (String club : clubs) {
      try (Reading reading = reader.open(club)) {
        List<FeedEvent> feed = reading.feed(0, 10_000);
        List<Fate> fates =
            feed.stream().map(event -> reading.fate(event.envelope().id()).orElseThrow()).toList();
        kept.put(
            club,
            List.of(
                reading.position(),
                fates,
                reading.digest(),
                EveryAnswer.of(reading.facts(), View.EVERYTHING)));
      }
    }
    return kept;
  }

  /** What rows keep that were made in one go. */
  Map<String, Object> keptAtOnce(Path folder) {
    try (FoldedRows rows = new FoldedRows(folder)) {
      applyTo(rows, new Random(1));
      Map<String, Object> kept = kept(rows.reader());
      assertThat(kept).hasSameSizeAs(clubs);
      return kept;
    }
  }
}
