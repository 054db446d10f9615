package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.JournalRecord;
import dev.poleward.service.journal.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Rows and offsets are written together: wherever the writing stops, going on from the offset gives
 * what one go would have given. An event applied twice would count as repeated, one applied never
 * would be missing.
 */
@Timeout(120)
class RowsAfterAStopTest {

  private static final Duration LONG = Duration.ofSeconds(30);

  private static final List<Integer> EVEN = List.of(0, 2, 4, 6, 8, 10);
  private static final List<Integer> ODD = List.of(1, 3, 5, 7, 9, 11);

  @TempDir private Path folder;
  private final TrainingTold told = new TrainingTold(6, 4_000);

  @Test
  void aKillAfterAnyBatchLosesAndRepeatsNothing() {
    // Given
    Map<String, Object> expected = told.keptAtOnce(folder.resolve("at-once"));
    Random random = new Random(21);
    StoredRows live = new StoredRows(folder.resolve("live"));
    FoldedRows rows = new FoldedRows(live.folder());
    int kills = 0;

    // When
    List<List<JournalRecord>> rest = told.batchesFrom(rows.next(), random);
    while (!rest.isEmpty()) {
      rest.subList(0, Math.min(rest.size(), 1 + random.nextInt(3))).forEach(rows::applyRecords);
      StoredRows killed = live;
      live = killed.copiedTo(folder.resolve("killed-" + kills++));
      long[] applied = rows.next();
      rows.close();
      rows = new FoldedRows(live.folder());
      assertThat(rows.next()).isEqualTo(applied);
      rest = told.batchesFrom(rows.next(), random);
      assertThat(kills).as("each stop is further on").isLessThan(100);
    }

    // Then
    assertThat(kills).isGreaterThan(5);
    assertThat(told.kept(rows.reader())).isEqualTo(expected);
    assertThat(rows.next()).isEqualTo(told.journal.ends(LONG));
    rows.close();
  }

  /**
   * Some threads are behind and write into memory only, others are not, and now and then memory is
   * brought to the disk: what is lost is lost in order, and none of it is what had been logged.
   */
  @Test
  void aKillWhileSomePartitionsAreRebuiltLosesAndRepeatsNothing() {
    // Given
    Map<String, Object> expected = told.keptAtOnce(folder.resolve("at-once"));
    Random random = new Random(24);
    StoredRows live = new StoredRows(folder.resolve("live"));

    for (int kill = 0; kill < 25; kill++) {
      // When
      StoredRows killed = new StoredRows(folder.resolve("killed-" + kill));
      try (RowStore store = RowStore.open(live.folder(), RowSettings.DEFAULT)) {
        AppliedOffsets applied = new AppliedOffsets(Projection.appliedIn(store));
        FoldThread behind = fold(store, applied, EVEN, 1_000_000);
        FoldThread upToDate = fold(store, applied, ODD, 0);
        List<List<JournalRecord>> rest = told.batchesFrom(applied.next(), random);
        for (List<JournalRecord> batch : rest.subList(0, Math.min(rest.size(), 3))) {
          behind.apply(those(batch, EVEN));
          upToDate.apply(those(batch, ODD));
          if (random.nextInt(6) == 0) {
            store.flush();
          }
        }
        live.copiedTo(killed.folder());

        // Then
        try (RowStore left = RowStore.open(killed.folder(), RowSettings.DEFAULT)) {
          long[] next = Projection.appliedIn(left);
          ODD.forEach(
              partition -> assertThat(next[partition]).isEqualTo(applied.next()[partition]));
          EVEN.forEach(
              partition ->
                  assertThat(next[partition]).isLessThanOrEqualTo(applied.next()[partition]));
        }
      }
      live = killed;
    }
    try (FoldedRows rows = new FoldedRows(live.folder())) {
      told.applyTo(rows, random);
      assertThat(told.kept(rows.reader())).isEqualTo(expected);
    }
  }

  private FoldThread fold(
      RowStore store, AppliedOffsets applied, List<Integer> partitions, long end) {
    long[] ends = new long[Journal.PARTITIONS];
    Arrays.fill(ends, end);
    return new FoldThread(
        partitions,
        told.journal,
        ends,
        store,
        new Rows(HistoryEntries.CODEC),
        applied,
        new HeardFolds());
  }

  private static List<JournalRecord> those(List<JournalRecord> batch, List<Integer> partitions) {
    return batch.stream()
        .filter(record -> partitions.contains(record.place().partition()))
        .toList();
  }

  /** Once a backlog is behind, all of it is on the disk. */
  @Test
  void aKillAfterRebuildingLosesNothing() {
    // Given
    StoredRows live = new StoredRows(folder.resolve("live"));
    long[] ends = told.journal.ends(LONG);
    long[] longEnds = Arrays.stream(ends).map(end -> end == 0 ? 0 : end + 10_000).toArray();

    // When
    try (FoldedRows rows = new FoldedRows(live.folder(), longEnds)) {
      told.applyTo(rows, new Random(25));
      rows.applyRecords(foreign(ends, longEnds));
      live.copiedTo(folder.resolve("killed"));
    }

    // Then
    try (FoldedRows rows = new FoldedRows(folder.resolve("killed"))) {
      assertThat(rows.next()).isEqualTo(longEnds);
      assertThat(told.kept(rows.reader())).isEqualTo(told.keptAtOnce(folder.resolve("at-once")));
    }
  }

  private static List<JournalRecord> foreign(long[] from, long[] to) {
    return IntStream.range(0, from.length)
        .filter(partition -> to[partition] > from[partition])
        .<JournalRecord>mapToObj(
            partition ->
                new JournalRecord.Foreign(new Place(partition, to[partition] - 1), "a test's"))
        .toList();
  }

  /** A write that was under way: of the last log only the first bytes are there. */
  @Test
  void aWriteThatWasCutOffAnywhereLosesAndRepeatsNothing() throws IOException {
    // Given
    Map<String, Object> expected = told.keptAtOnce(folder.resolve("at-once"));
    Random random = new Random(22);
    StoredRows live = new StoredRows(folder.resolve("live"));
    try (FoldedRows rows = new FoldedRows(live.folder())) {
      told.applyTo(rows, random);
      live.copiedTo(folder.resolve("killed"));
    }
    StoredRows killed = new StoredRows(folder.resolve("killed"));

    for (int cut = 0; cut < 15; cut++) {
      // When
      StoredRows torn = killed.copiedTo(folder.resolve("torn-" + cut));
      Path log = torn.logs().getLast();
      byte[] bytes = Files.readAllBytes(log);
      Files.write(log, Arrays.copyOf(bytes, random.nextInt(bytes.length)));
      try (FoldedRows rows = new FoldedRows(torn.folder())) {
        told.applyTo(rows, random);

        // Then
        assertThat(told.kept(rows.reader())).isEqualTo(expected);
      }
    }
  }

  @Test
  void aProjectionThatIsStoppedAgainAndAgainLosesAndRepeatsNothing() throws InterruptedException {
    // Given
    Map<String, Object> expected = told.keptAtOnce(folder.resolve("at-once"));
    Random random = new Random(23);
    Path stopped = folder.resolve("stopped");
    long[] applied = new long[12];

    // When
    for (int stop = 0; stop < 12; stop++) {
      try (RowStore store = RowStore.open(stopped, RowSettings.DEFAULT)) {
        assertThat(Projection.appliedIn(store)).isEqualTo(applied);
        try (Projection projection = projection(store, 1 + random.nextInt(12))) {
          projection.start(new HeardFolds());
          Thread.sleep(Duration.ofNanos(random.nextInt(4_000_000)));
        }
        applied = Projection.appliedIn(store);
      }
    }

    // Then
    try (RowStore store = RowStore.open(stopped, RowSettings.DEFAULT);
        Projection projection = projection(store, 3)) {
      projection.start(new HeardFolds());
      assertThat(projection.awaitAll(told.journal.ends(LONG), LONG)).isTrue();
      assertThat(told.kept(new RowClubReader(store, HistoryEntries.CODEC, CatchUp.SOLE_NODE)))
          .isEqualTo(expected);
    }
  }

  private Projection projection(RowStore store, int shares) {
    return new Projection(told.journal, store, HistoryEntries.CODEC, shares);
  }
}
