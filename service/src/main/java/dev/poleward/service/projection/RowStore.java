package dev.poleward.service.projection;

import dev.poleward.service.journal.CannotStart;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rocksdb.BlockBasedTableConfig;
import org.rocksdb.BloomFilter;
import org.rocksdb.Cache;
import org.rocksdb.ColumnFamilyOptions;
import org.rocksdb.CompressionType;
import org.rocksdb.DBOptions;
import org.rocksdb.FlushOptions;
import org.rocksdb.IndexType;
import org.rocksdb.InfoLogLevel;
import org.rocksdb.LRUCache;
import org.rocksdb.Options;
import org.rocksdb.ReadOptions;
import org.rocksdb.RocksDB;
import org.rocksdb.RocksDBException;
import org.rocksdb.Snapshot;
import org.rocksdb.Status;
import org.rocksdb.WriteBatch;
import org.rocksdb.WriteBufferManager;
import org.rocksdb.WriteOptions;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Rows on disk. Holds nothing that the journal could not give again: a missing, damaged or older
 * folder is cleared and filled anew. Safe for use by many threads.
 */
public final class RowStore implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(RowStore.class);

  /** Changes whenever the meaning of a row does; rows of another generation are not read. */
  private static final String GENERATION = "generation-3";

  private static final String DAMAGED = "damaged";

  /** RocksDB's own file; what it says of it when it cannot have it names the file. */
  private static final String LOCK = "LOCK";

  /**
   * Few shards and small index parts: a shard must hold many of them beside what write buffers are
   * charged for, or every look-up reads its index from the disk again.
   */
  private static final int CACHE_SHARD_BITS = 2;

  private static final double INDEX_SHARE = 0.5;
  private static final int BLOCK_BYTES = 8 * 1024;

  static {
    RocksDB.loadLibrary();
  }

  private final Path folder;
  private final List<AutoCloseable> held;
  private final RocksDB db;
  private final WriteOptions writing = new WriteOptions();
  private final WriteOptions writingUnlogged = new WriteOptions().setDisableWAL(true);

  private RowStore(Path folder, RocksDB db, List<AutoCloseable> held) {
    this.folder = folder;
    this.db = db;
    this.held = held;
  }

  /**
   * Opens the rows below a folder, or begins anew where they are missing, damaged or of another
   * generation.
   *
   * @param folder holds nothing else
   */
  public static RowStore open(Path folder, RowSettings settings) {
    try {
      Files.createDirectories(folder);
      clearOthers(folder);
      Path current = folder.resolve(GENERATION);
      if (Files.exists(current.resolve(DAMAGED))) {
        LOG.warn("Rows in {} were found damaged; they are rebuilt from the journal", current);
        clear(current);
      }
      return openOrBeginAnew(current, settings);
    } catch (IOException e) {
      throw new CannotStart("The folder for rows, %s, cannot be used.".formatted(folder), e);
    }
  }

  private static RowStore openOrBeginAnew(Path folder, RowSettings settings) throws IOException {
    try {
      return openVerified(folder, settings);
    } catch (RocksDBException e) {
      refuseWhatIsInUse(folder, e);
      refuseWhatIsNotDamage(folder, e);
      LOG.warn("Rows in {} cannot be read ({}); they are rebuilt", folder, e.getMessage());
      clear(folder);
      try {
        return openVerified(folder, settings);
      } catch (RocksDBException again) {
        throw new CannotStart("No rows can be kept in %s.".formatted(folder), again);
      }
    }
  }

  /** Rows that somebody else has open are no damaged rows, and clearing them would damage them. */
  private static void refuseWhatIsInUse(Path folder, RocksDBException e) {
    if (String.valueOf(e.getMessage()).contains(folder.resolve(LOCK).toString())) {
      throw new CannotStart(
          "The rows in " + folder + " are in use by another process; stop that one first", e);
    }
  }

  /** A full disk or too many open files are no damage, and rows that are right are not cleared. */
  private static void refuseWhatIsNotDamage(Path folder, RocksDBException e) {
    boolean ioFailed = e.getStatus() != null && e.getStatus().getCode() == Status.Code.IOError;
    boolean fileMissing = String.valueOf(e.getMessage()).contains("No such file");
    if (ioFailed && !fileMissing) {
      throw new CannotStart("The rows in " + folder + " cannot be opened: " + e.getMessage(), e);
    }
  }

  private static RowStore openVerified(Path folder, RowSettings settings)
      throws RocksDBException, IOException {
    Files.createDirectories(folder);
    List<AutoCloseable> held = new ArrayList<>();
    Cache cache =
        hold(held, new LRUCache(settings.blockCacheBytes(), CACHE_SHARD_BITS, false, INDEX_SHARE));
    WriteBufferManager buffers =
        hold(held, new WriteBufferManager(settings.writeBufferBytes(), cache));
    Options options = hold(held, options(settings, cache, buffers, held));
    RowStore store = null;
    try {
      store = new RowStore(folder, RocksDB.open(options, folder.toString()), held);
      store.db.verifyChecksum();
      return store;
    } catch (RocksDBException e) {
      if (store == null) {
        release(held);
      } else {
        store.close();
      }
      throw e;
    }
  }

  private static Options options(
      RowSettings settings, Cache cache, WriteBufferManager buffers, List<AutoCloseable> held) {
    BlockBasedTableConfig table =
        new BlockBasedTableConfig()
            .setBlockCache(cache)
            .setFilterPolicy(hold(held, new BloomFilter(10)))
            .setIndexType(IndexType.kTwoLevelIndexSearch)
            .setPartitionFilters(true)
            .setMetadataBlockSize(BLOCK_BYTES)
            .setBlockSize(BLOCK_BYTES)
            .setCacheIndexAndFilterBlocks(true)
            .setCacheIndexAndFilterBlocksWithHighPriority(true)
            .setPinTopLevelIndexAndFilter(true)
            .setPinL0FilterAndIndexBlocksInCache(true)
            .setFormatVersion(5);
    return new Options(hold(held, logsInSequence()), hold(held, new ColumnFamilyOptions()))
        .setCreateIfMissing(true)
        .setParanoidChecks(true)
        .setTableFormatConfig(table)
        .setWriteBufferManager(buffers)
        .setWriteBufferSize(settings.writeBufferBytes() / 3)
        .setMaxWriteBufferNumber(3)
        .setMaxOpenFiles(settings.openFilesMax())
        .setMaxBackgroundJobs(2)
        .setCompressionType(CompressionType.LZ4_COMPRESSION)
        .setLevelCompactionDynamicLevelBytes(true)
        .setMemtablePrefixBloomSizeRatio(0.05)
        .setMemtableWholeKeyFiltering(true)
        .setInfoLogLevel(InfoLogLevel.WARN_LEVEL)
        .setKeepLogFileNum(2)
        .setMaxTotalWalSize(2 * settings.writeBufferBytes());
  }

  /**
   * Each log of recent writes says what the one before it ended with. Without that, a loss of power
   * that takes an older log and leaves a newer one would leave a gap that nobody notices: rows and
   * offsets of the newer one over rows that lack the older one's.
   */
  private static DBOptions logsInSequence() {
    Properties options = new Properties();
    options.setProperty("track_and_verify_wals", "true");
    return Objects.requireNonNull(
        DBOptions.getDBOptionsFromProps(options), "RocksDB knows track_and_verify_wals");
  }

  private static <T extends AutoCloseable> T hold(List<AutoCloseable> held, T resource) {
    held.add(resource);
    return resource;
  }

  /** Which journal these rows were made from, if that was ever said. */
  private Optional<String> journal() {
    byte @Nullable [] row = get(RowKeys.journal());
    return row == null ? Optional.empty() : Optional.of(new RowInput(row).text());
  }

  /**
   * Whether these rows are made from that journal. Where that was never said of any, they are from
   * now on. Rows of one journal say nothing about another, however alike their offsets look.
   */
  public boolean belongTo(String journal) {
    Optional<String> before = journal();
    if (before.isPresent()) {
      return before.get().equals(journal);
    }
    try {
      db.put(writing, RowKeys.journal(), new RowOutput().text(journal).done());
      return true;
    } catch (RocksDBException e) {
      throw failed("cannot write rows", e);
    }
  }

  /** Writes a batch whole or not at all. It outlives the process once this returns. */
  void write(WriteBatch batch) {
    try {
      db.write(writing, batch);
    } catch (RocksDBException e) {
      throw failed("cannot write rows", e);
    }
  }

  /**
   * Writes a batch whole or not at all, but only into memory: until {@link #flush} a stop of the
   * process takes the latest such batches back, in order. For rebuilding, where nothing is
   * acknowledged that the journal could not give again.
   */
  void writeUnlogged(WriteBatch batch) {
    try {
      db.write(writingUnlogged, batch);
    } catch (RocksDBException e) {
      throw failed("cannot write rows", e);
    }
  }

  /** Brings all rows that are in memory to the disk. */
  void flush() {
    try (FlushOptions waiting = new FlushOptions().setWaitForFlush(true)) {
      db.flush(waiting);
    } catch (RocksDBException e) {
      throw failed("cannot bring rows to the disk", e);
    }
  }

  byte @Nullable [] get(byte[] key) {
    try {
      return db.get(key);
    } catch (RocksDBException e) {
      throw failed("cannot read a row", e);
    }
  }

  /** One value or null for each key, in their order. */
  List<byte @Nullable []> get(List<byte[]> keys) {
    if (keys.isEmpty()) {
      // The store asserts that it is asked for something.
      return List.of();
    }
    try {
      return db.multiGetAsList(keys);
    } catch (RocksDBException e) {
      throw failed("cannot read rows", e);
    }
  }

  /** The rows as they are now, for one reading. */
  RowSnapshot snapshot() {
    Snapshot snapshot = db.getSnapshot();
    return new RowSnapshot(this, db, snapshot, new ReadOptions().setSnapshot(snapshot));
  }

  /** Marks the rows for rebuilding at the next start when they turn out to be damaged. */
  RowsUnreadable failed(String what, RocksDBException e) {
    if (e.getStatus() != null && e.getStatus().getCode() == Status.Code.Corruption) {
      try {
        Files.writeString(folder.resolve(DAMAGED), String.valueOf(e.getMessage()));
      } catch (IOException unwritable) {
        e.addSuppressed(unwritable);
      }
    }
    return new RowsUnreadable(what + " in " + folder, e);
  }

  /** Brings everything to its files first: the next start need not read it from the log. */
  @Override
  public void close() {
    try {
      flush();
    } catch (RowsUnreadable e) {
      LOG.warn("What is in memory stays in the log: {}", e.getMessage());
    }
    writing.close();
    writingUnlogged.close();
    db.close();
    release(held);
  }

  private static void release(List<AutoCloseable> held) {
    for (AutoCloseable resource : held.reversed()) {
      try {
        resource.close();
      } catch (Exception e) {
        throw new IllegalStateException("closing native memory does not fail", e);
      }
    }
  }

  private static void clearOthers(Path folder) throws IOException {
    try (Stream<Path> children = Files.list(folder)) {
      for (Path child : children.toList()) {
        if (!child.endsWith(GENERATION)) {
          clear(child);
        }
      }
    }
  }

  private static void clear(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
