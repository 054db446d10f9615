package dev.poleward.service.projection;

import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import org.rocksdb.ReadOptions;
import org.rocksdb.RocksDB;
import org.rocksdb.RocksDBException;
import org.rocksdb.RocksIterator;
import org.rocksdb.Snapshot;

/** The rows as they were at one moment. For one thread; to be closed. */
final class RowSnapshot implements AutoCloseable {

  private final RowStore store;
  private final RocksDB db;
  private final Snapshot snapshot;
  private final ReadOptions options;

  RowSnapshot(RowStore store, RocksDB db, Snapshot snapshot, ReadOptions options) {
    this.store = store;
    this.db = db;
    this.snapshot = snapshot;
    this.options = options;
  }

  byte @Nullable [] get(byte[] key) {
    try {
      return db.get(options, key);
    } catch (RocksDBException e) {
      throw store.failed("cannot read a row", e);
    }
  }

  /**
   * Gives the rows below a prefix in the order of their keys, until {@code receiver} says false.
   *
   * @param from where to begin, the prefix itself or a key below it
   */
  void scan(byte[] prefix, byte[] from, BiPredicate<byte[], byte[]> receiver) {
    try (RocksIterator rows = db.newIterator(options)) {
      for (rows.seek(from); rows.isValid(); rows.next()) {
        byte[] key = rows.key();
        if (!RowKeys.startsWith(key, prefix) || !receiver.test(key, rows.value())) {
          return;
        }
      }
      rows.status();
    } catch (RocksDBException e) {
      throw store.failed("cannot read rows", e);
    }
  }

  @Override
  public void close() {
    options.close();
    db.releaseSnapshot(snapshot);
    snapshot.close();
  }
}
