package dev.poleward.service.projection;

import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.Place;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the rows up with the journal. Rows and offsets are written in one batch, so that a stop at
 * any instant leaves rows that are right up to where the offsets say. Safe for use by many threads.
 */
public final class Projection implements Applied, AutoCloseable {

  private static final Duration ENDS_MAX = Duration.ofSeconds(15);
  private static final Duration STOP_WAIT = Duration.ofSeconds(10);

  private final Journal journal;
  private final RowStore store;
  private final EventCodec codec;
  private final int shares;
  private final AppliedOffsets applied;
  private final List<FoldThread> folds = new ArrayList<>();
  private final List<Thread> threads = new ArrayList<>();

  /**
   * A projection that has not begun.
   *
   * @param shares among how many threads the partitions are divided, 1 to {@link
   *     Journal#PARTITIONS}
   */
  public Projection(Journal journal, RowStore store, EventCodec codec, int shares) {
    if (shares < 1 || shares > Journal.PARTITIONS) {
      throw new IllegalArgumentException("partitions are divided among 1 to 12 threads: " + shares);
    }
    this.journal = journal;
    this.store = store;
    this.codec = codec;
    this.shares = shares;
    this.applied = new AppliedOffsets(appliedIn(store));
  }

  /**
   * Begins to apply, from where the rows are. To be called once.
   *
   * @throws dev.poleward.service.journal.JournalException when the journal's ends cannot be had
   */
  public void start(FoldListener listener) {
    long[] ends = journal.ends(ENDS_MAX);
    for (int share = 0; share < shares; share++) {
      int first = share;
      List<Integer> partitions =
          IntStream.range(0, Journal.PARTITIONS).filter(p -> p % shares == first).boxed().toList();
      FoldThread fold =
          new FoldThread(partitions, journal, ends, store, new Rows(codec), applied, listener);
      folds.add(fold);
      threads.add(Thread.ofPlatform().name("fold-" + share).start(fold));
    }
  }

  /** How far the rows of a store go: for each partition the next offset to apply. */
  public static long[] appliedIn(RowStore store) {
    long[] next = new long[Journal.PARTITIONS];
    for (int partition = 0; partition < next.length; partition++) {
      byte[] row = store.get(RowKeys.offset(partition));
      next[partition] = row == null ? 0 : new RowInput(row).number();
    }
    return next;
  }

  /** How far it has come: for each partition the next offset to apply. */
  public long[] next() {
    return applied.next();
  }

  /**
   * Waits until everything before these offsets is applied.
   *
   * @param ends one offset for each partition
   * @return whether that came about in time
   */
  public boolean awaitAll(long[] ends, Duration wait) {
    long deadline = System.nanoTime() + wait.toNanos();
    for (int partition = 0; partition < ends.length; partition++) {
      long left = Math.max(0, deadline - System.nanoTime());
      if (!applied.await(partition, ends[partition], left)) {
        return false;
      }
    }
    return true;
  }

  @Override
  public boolean await(List<Place> places, Duration wait) {
    return applied.await(places, wait);
  }

  boolean await(int partition, long next, Duration wait) {
    return applied.await(partition, next, wait.toNanos());
  }

  @Override
  public Effect effect(String club, String eventId, Place place, byte[] contentHash) {
    byte @Nullable [] row = store.get(RowKeys.event(club, eventId));
    if (row == null) {
      throw new IllegalStateException("asked for an effect before it was applied: " + eventId);
    }
    EventRow event = EventRow.read(row);
    if (event.offset() == place.offset()) {
      return Effect.RECORDED;
    }
    return ContentHash.same(event.hash(), contentHash) ? Effect.REPEATED : Effect.CONTRADICTED;
  }

  /** Stops applying; the rows stay open. */
  @Override
  public void close() {
    folds.forEach(FoldThread::stop);
    for (Thread thread : threads) {
      try {
        if (!thread.join(STOP_WAIT)) {
          throw new IllegalStateException("a folding thread did not stop in time");
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }
}
