package dev.poleward.service.projection;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.projection.EventRow.EntityRow;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.rocksdb.RocksDBException;
import org.rocksdb.WriteBatch;

/**
 * Rows of a batch that is being built, over the rows that are written: what was put is seen at
 * once, and written with all the rest or not at all. For one thread, which is the only one that
 * writes rows of its clubs.
 */
final class PendingRows {

  private static final int CLUBS_REMEMBERED_MAX = 10_000;
  private static final int ENTITIES_REMEMBERED_MAX = 50_000;

  private record Named(String club, EntityRef entity) {}

  private record EventKey(String club, String id) {}

  private static final int MARKS_REMEMBERED_MAX = 20_000;
  private static final byte[] NOTHING = new byte[0];

  private final RowStore store;
  private final Map<EventKey, @Nullable EventRow> events = new HashMap<>();
  private final Map<Named, @Nullable EntityRow> reps = new HashMap<>();
  private final Map<Named, EntityRow> announced = new HashMap<>();
  private final Map<String, ClubRow> clubs = new HashMap<>();
  private final Cache<String, ClubRow> knownClubs =
      Caffeine.newBuilder().maximumSize(CLUBS_REMEMBERED_MAX).build();
  private final Cache<Named, EntityRow> knownEntities =
      Caffeine.newBuilder().maximumSize(ENTITIES_REMEMBERED_MAX).build();
  private final Cache<ByteBuffer, Boolean> knownMarks =
      Caffeine.newBuilder().maximumSize(MARKS_REMEMBERED_MAX).build();
  private WriteBatch batch = new WriteBatch();

  PendingRows(RowStore store) {
    this.store = store;
  }

  /** Looks up many events at once, so that {@link #event} need not one by one. */
  void expectEvents(List<Entry> entries) {
    List<byte[]> keys = new ArrayList<>(entries.size());
    for (Entry entry : entries) {
      keys.add(RowKeys.event(entry.club(), entry.envelope().id()));
    }
    List<byte @Nullable []> values = store.get(keys);
    for (int i = 0; i < entries.size(); i++) {
      byte[] value = values.get(i);
      events.put(
          new EventKey(entries.get(i).club(), entries.get(i).envelope().id()),
          value == null ? null : EventRow.read(value));
    }
  }

  /** Looks up many reps at once, so that {@link #entity} need not one by one. */
  void expectReps(List<String> clubsOfReps, List<String> reps) {
    List<byte[]> keys = new ArrayList<>(reps.size());
    for (int i = 0; i < reps.size(); i++) {
      keys.add(RowKeys.entity(clubsOfReps.get(i), new EntityRef(EntityKind.REP, reps.get(i))));
    }
    List<byte @Nullable []> values = store.get(keys);
    for (int i = 0; i < reps.size(); i++) {
      byte[] value = values.get(i);
      this.reps.put(
          new Named(clubsOfReps.get(i), new EntityRef(EntityKind.REP, reps.get(i))),
          value == null ? null : EntityRow.read(value));
    }
  }

  @Nullable EventRow event(String club, String id) {
    EventKey key = new EventKey(club, id);
    if (events.containsKey(key)) {
      return events.get(key);
    }
    byte[] value = store.get(RowKeys.event(club, id));
    return value == null ? null : EventRow.read(value);
  }

  @Nullable EntityRow entity(String club, EntityRef entity) {
    Named named = new Named(club, entity);
    EntityRow row = announced.get(named);
    if (row == null && reps.containsKey(named)) {
      return reps.get(named);
    }
    if (row == null) {
      row = knownEntities.getIfPresent(named);
    }
    if (row == null) {
      byte[] value = store.get(RowKeys.entity(club, entity));
      row = value == null ? null : EntityRow.read(value);
      if (row != null) {
        knownEntities.put(named, row);
      }
    }
    return row;
  }

  ClubRow club(String club) {
    ClubRow row = clubs.get(club);
    if (row == null) {
      row = knownClubs.getIfPresent(club);
    }
    if (row == null) {
      byte[] value = store.get(RowKeys.club(club));
      row = value == null ? ClubRow.NEW : ClubRow.read(value);
    }
    return row;
  }

  void put(String club, String event, EventRow row) {
    events.put(new EventKey(club, event), row);
    put(RowKeys.event(club, event), row.bytes());
  }

  void put(String club, EntityRef entity, EntityRow row) {
    announced.put(new Named(club, entity), row);
    put(RowKeys.entity(club, entity), row.bytes());
  }

  void put(String club, ClubRow row) {
    clubs.put(club, row);
  }

  /** Puts a row that says all by its key, unless it was put before as far as is remembered. */
  void putOnce(byte[] key) {
    ByteBuffer mark = ByteBuffer.wrap(key);
    if (knownMarks.getIfPresent(mark) == null) {
      knownMarks.put(mark, true);
      put(key, NOTHING);
    }
  }

  void put(byte[] key, byte[] value) {
    try {
      batch.put(key, value);
    } catch (RocksDBException e) {
      throw store.failed("cannot collect rows", e);
    }
  }

  /** Writes everything at once; it outlives the process. */
  void write() {
    write(store::write);
  }

  /** Writes everything at once, into memory; see {@link RowStore#writeUnlogged}. */
  void writeUnlogged() {
    write(store::writeUnlogged);
  }

  private void write(Consumer<WriteBatch> writer) {
    clubs.forEach((club, row) -> put(RowKeys.club(club), row.bytes()));
    writer.accept(batch);
    knownClubs.putAll(clubs);
    batch.close();
    batch = new WriteBatch();
    forget();
  }

  private void forget() {
    clubs.clear();
    events.clear();
    announced.clear();
    reps.clear();
  }
}
