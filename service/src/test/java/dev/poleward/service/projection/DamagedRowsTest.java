package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.service.journal.CannotStart;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.rocksdb.RocksDBException;
import org.rocksdb.WriteBatch;

/** Damaged rows are rebuilt from the journal rather than read, and never silently shorter. */
@Timeout(120)
class DamagedRowsTest {

  private static final long[] NOTHING = new long[12];
  private static final TrainingTold TOLD = new TrainingTold(6, 5_000);

  @TempDir private static Path once;
  private static Map<String, Object> expected;
  private static StoredRows whole;

  @TempDir private Path folder;

  /** Rows with tables and with a log of what is not in a table yet, as a kill leaves them. */
  @BeforeAll
  static void fold() {
    expected = TOLD.keptAtOnce(once.resolve("at-once"));
    StoredRows live = new StoredRows(once.resolve("live"));
    Random random = new Random(31);
    for (int start = 0; start < 3; start++) {
      try (FoldedRows rows = new FoldedRows(live.folder())) {
        TOLD.batchesFrom(rows.next(), random).stream().limit(15).forEach(rows::applyRecords);
      }
    }
    try (FoldedRows rows = new FoldedRows(live.folder())) {
      TOLD.applyTo(rows, random);
      whole = live.copiedTo(once.resolve("whole"));
    }
    assertThat(whole.tables()).isNotEmpty();
    assertThat(whole.logs()).isNotEmpty();
  }

  @FunctionalInterface
  private interface Damage {
    void to(StoredRows rows) throws IOException;
  }

  /** Does that to the rows; tells how far they go when they are opened then. */
  private long[] openedAfter(Damage damage) throws IOException {
    StoredRows damaged = whole.copiedTo(folder.resolve("damaged"));
    damage.to(damaged);
    try (FoldedRows rows = new FoldedRows(damaged.folder())) {
      long[] next = rows.next();
      TOLD.applyTo(rows, new Random(1));
      assertThat(TOLD.kept(rows.reader())).isEqualTo(expected);
      return next;
    }
  }

  private static void shorten(Path file, double part) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(bytes, (int) (part * bytes.length)));
  }

  private static void flip(Path file, int at) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[at] ^= 0x20;
    Files.write(file, bytes);
  }

  @Test
  void rowsThatAreWholeAreNotRebuilt() throws IOException {
    assertThat(openedAfter(_ -> {})).isEqualTo(TOLD.journal.ends(Duration.ofSeconds(1)));
  }

  @Test
  void aTableThatIsCutOffIsNotRead() throws IOException {
    assertThat(openedAfter(rows -> shorten(rows.tables().getFirst(), 0.5))).isEqualTo(NOTHING);
  }

  @Test
  void aTableOfNothingIsNotRead() throws IOException {
    assertThat(openedAfter(rows -> shorten(rows.tables().getLast(), 0))).isEqualTo(NOTHING);
  }

  @Test
  void aTableThatIsMissingIsNotDoneWithout() throws IOException {
    assertThat(openedAfter(rows -> Files.delete(rows.tables().getFirst()))).isEqualTo(NOTHING);
  }

  @Test
  void aTableWithOneBitOfItsDataTurnedIsNotRead() throws IOException {
    assertThat(openedAfter(rows -> flip(rows.tables().getFirst(), 700))).isEqualTo(NOTHING);
  }

  @Test
  void withoutAManifestNothingIsRead() throws IOException {
    assertThat(openedAfter(rows -> Files.delete(rows.files("MANIFEST-.*").getLast())))
        .isEqualTo(NOTHING);
  }

  @Test
  void aManifestWithOneBitTurnedIsNotBelieved() throws IOException {
    assertThat(openedAfter(rows -> flip(rows.files("MANIFEST-.*").getLast(), 30)))
        .isEqualTo(NOTHING);
  }

  /** The log of recent writes is there, and must not pass for all there is. */
  @Test
  void withoutThePointerToTheManifestNothingIsRead() throws IOException {
    assertThat(openedAfter(rows -> Files.delete(rows.files("CURRENT").getFirst())))
        .isEqualTo(NOTHING);
  }

  @Test
  void aPointerToNowhereIsNotFollowed() throws IOException {
    assertThat(
            openedAfter(
                rows -> Files.writeString(rows.files("CURRENT").getFirst(), "MANIFEST-999999\n")))
        .isEqualTo(NOTHING);
    assertThat(folder.resolve("damaged/generation-3")).isDirectory();
  }

  @Test
  void withoutTheLogOfRecentWritesNothingIsRead() throws IOException {
    assertThat(
            openedAfter(
                rows -> {
                  for (Path log : rows.logs()) {
                    Files.delete(log);
                  }
                }))
        .isEqualTo(NOTHING);
  }

  @Test
  void rowsOfAnotherGenerationAreClearedAndNotRead() throws IOException {
    long[] next =
        openedAfter(
            rows -> {
              Path ours = rows.folder().resolve("generation-3");
              Files.move(ours, rows.folder().resolve("generation-0"));
            });

    assertThat(next).isEqualTo(NOTHING);
    assertThat(folder.resolve("damaged")).isDirectoryNotContaining("glob:**generation-0");
  }

  @Test
  void rowsThatWereFoundDamagedWhileTheyWereReadAreRebuiltAtTheNextStart() throws IOException {
    assertThat(
            openedAfter(
                rows ->
                    Files.writeString(
                        rows.folder().resolve("generation-3/damaged"), "block checksum")))
        .isEqualTo(NOTHING);
    assertThat(folder.resolve("damaged/generation-3/damaged")).doesNotExist();
  }

  @Test
  void aBitTurnedAnywhereShowsInNoAnswer() throws IOException {
    Random random = new Random(33);
    for (int round = 0; round < 20; round++) {
      StoredRows damaged = whole.copiedTo(folder.resolve("turned-" + round));
      List<Path> files = damaged.files(".*");
      Path file = files.get(random.nextInt(files.size()));
      int size = (int) Files.size(file);
      if (size > 0) {
        flip(file, random.nextInt(size));
      }
      try (FoldedRows rows = new FoldedRows(damaged.folder())) {
        TOLD.applyTo(rows, random);
        assertThat(TOLD.kept(rows.reader())).as("after a bit of %s", file).isEqualTo(expected);
      }
    }
  }

  /**
   * After a loss of power an older log of writes may be gone while a newer one is there, offsets
   * and all.
   */
  @Test
  void aGapBetweenLogsIsNoticed() throws Exception {
    // Given
    long written = 0;
    RowSettings small = new RowSettings(8 << 20, 4 << 20, 64);
    StoredRows live = new StoredRows(folder.resolve("live"));
    Map<Path, byte[]> logs = new TreeMap<>();
    try (RowStore store = RowStore.open(live.folder(), small)) {
      StoredRows early = live.copiedTo(folder.resolve("early"));
      while (logs.size() < 2) {
        write(store, written++);
        for (Path log : live.logs()) {
          logs.put(early.folder().resolve(live.folder().relativize(log)), Files.readAllBytes(log));
        }
      }
    }
    for (Map.Entry<Path, byte[]> log : logs.entrySet()) {
      Files.write(log.getKey(), log.getValue());
    }
    StoredRows gap = new StoredRows(folder.resolve("early")).copiedTo(folder.resolve("gap"));

    // When
    Files.delete(gap.logs().getFirst());

    // Then
    try (RowStore store = RowStore.open(gap.folder(), small)) {
      assertThat(Projection.appliedIn(store)).isEqualTo(NOTHING);
    }
    try (RowStore store = RowStore.open(folder.resolve("early"), small)) {
      assertThat(Projection.appliedIn(store)[0]).isEqualTo(written);
    }
  }

  private static void write(RowStore store, long number) throws RocksDBException {
    byte[] row = new byte[20_000];
    new Random(number).nextBytes(row);
    try (WriteBatch batch = new WriteBatch()) {
      batch.put(RowKeys.feed("saltmarsh", number), row);
      batch.put(RowKeys.offset(0), new RowOutput().number(number + 1).done());
      store.write(batch);
    }
  }

  /** Rows that another process has open would look damaged to one that may not open them. */
  @Test
  void rowsThatAreInUseAreLeftAlone() {
    StoredRows used = whole.copiedTo(folder.resolve("used"));
    try (FoldedRows rows = new FoldedRows(used.folder())) {
      assertThatThrownBy(() -> new FoldedRows(used.folder()))
          .isInstanceOf(CannotStart.class)
          .hasMessageContaining(used.folder().toString());

      TOLD.applyTo(rows, new Random(1));
      assertThat(TOLD.kept(rows.reader())).isEqualTo(expected);
    }
  }
}
