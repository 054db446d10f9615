package dev.poleward.service.projection;

import dev.poleward.service.journal.AppendOutcome;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.JournalException;
import dev.poleward.service.journal.MemoryJournal;
import dev.poleward.service.journal.Tail;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * A journal whose ends are only told when a test lets them go, and then as they were when they were
 * asked for. Safe for use by many threads.
 */
final class SlowJournal implements Journal {

  final MemoryJournal journal = new MemoryJournal();
  final AtomicInteger asked = new AtomicInteger();
  final AtomicInteger mostAtOnce = new AtomicInteger();
  private final AtomicInteger atOnce = new AtomicInteger();
  private final Semaphore answers = new Semaphore(0);
  private final Queue<Throwable> failures = new ArrayDeque<>();

  /** Lets so many more questions be answered. */
  void answer(int questions) {
    answers.release(questions);
  }

  /** Lets the next question fail so. */
  synchronized void failNextWith(Throwable failure) {
    failures.add(failure);
  }

  private synchronized @Nullable Throwable failure() {
    return failures.poll();
  }

  @Override
  public long[] ends(Duration wait) {
    long[] ends = journal.ends(wait);
    asked.incrementAndGet();
    mostAtOnce.accumulateAndGet(atOnce.incrementAndGet(), Math::max);
    awaitLeave();
    atOnce.decrementAndGet();
    switch (failure()) {
      case null -> {}
      case RuntimeException e -> throw e;
      case Error e -> throw e;
      case Throwable e -> throw new IllegalArgumentException(e);
    }
    return ends;
  }

  private void awaitLeave() {
    try {
      answers.acquire();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new JournalException("the test is over", e);
    }
  }

  @Override
  public AppendOutcome append(List<Entry> entries, Duration wait) {
    return journal.append(entries, wait);
  }

  @Override
  public int partitionOf(String club) {
    return journal.partitionOf(club);
  }

  @Override
  public Tail tail(List<Integer> partitions, long[] from) {
    return journal.tail(partitions, from);
  }

  @Override
  public void close() {
    journal.close();
  }
}
