package dev.poleward.service.access;

import dev.poleward.service.journal.JournalException;
import dev.poleward.service.journal.PersonKeyTopic;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One topic of people's keys in memory, seen by several nodes, each of which may lag behind. Safe
 * for use by many threads.
 */
final class KeyLog {

  static final Duration LAST_COPY_GONE_WITHIN = Duration.ofHours(24);

  private List<PersonKeyTopic.WrappedKey> records = new ArrayList<>();
  private int appendsLeft = Integer.MAX_VALUE;

  /** A node's view, from the first record on. */
  Node node() {
    return new Node();
  }

  /** Lets so many more appends succeed. */
  synchronized void failAfter(int appends) {
    appendsLeft = appends;
  }

  /**
   * Leaves of each name what came last, and nothing of the destroyed. For nodes that come later.
   */
  synchronized void compact() {
    Set<String> seen = new HashSet<>();
    List<PersonKeyTopic.WrappedKey> left = new ArrayList<>();
    for (PersonKeyTopic.WrappedKey key : records.reversed()) {
      if (seen.add(key.name()) && key.wrapped() != null) {
        left.addFirst(key);
      }
    }
    records = left;
  }

  synchronized List<PersonKeyTopic.WrappedKey> records() {
    return List.copyOf(records);
  }

  private synchronized int add(PersonKeyTopic.WrappedKey key) {
    if (appendsLeft-- <= 0) {
      throw new JournalException("out of reach");
    }
    records.add(key);
    return records.size();
  }

  /** One node's view. */
  final class Node implements PersonKeyTopic {

    private final ExecutorService thread =
        Executors.newSingleThreadExecutor(Thread.ofVirtual().factory());
    private volatile @Nullable Consumer<WrappedKey> receiver;
    private volatile boolean stalled;
    private final AtomicInteger given = new AtomicInteger();
    private final AtomicInteger catchUps = new AtomicInteger();

    /** Stands still until it has to go on because somebody waits. */
    void stall() {
      stalled = true;
    }

    int catchUps() {
      return catchUps.get();
    }

    @Override
    public void follow(Consumer<WrappedKey> receiver, Duration wait) {
      this.receiver = receiver;
      thread.execute(this::run);
      upTo(records().size());
    }

    private void run() {
      while (!Thread.currentThread().isInterrupted()) {
        if (stalled) {
          LockSupport.parkNanos(100_000);
        } else {
          give();
        }
      }
    }

    private void give() {
      Consumer<WrappedKey> to = receiver;
      List<WrappedKey> all = records();
      if (to != null && given.get() < all.size()) {
        to.accept(all.get(given.get()));
        given.incrementAndGet();
      } else {
        LockSupport.parkNanos(20_000);
      }
    }

    private void upTo(int count) {
      stalled = false;
      long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
      while (given.get() < count) {
        if (System.nanoTime() > deadline) {
          throw new JournalException("not in time");
        }
        LockSupport.parkNanos(20_000);
      }
    }

    @Override
    public void append(WrappedKey key, Duration wait) {
      upTo(add(key));
    }

    @Override
    public void catchUp(Duration wait) {
      catchUps.incrementAndGet();
      upTo(records().size());
    }

    @Override
    public Duration lastCopyGoneWithin() {
      return LAST_COPY_GONE_WITHIN;
    }

    @Override
    public void close() {
      thread.shutdownNow();
    }
  }
}
