package dev.poleward.service.access;

import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Looks after keys that should be gone, in the background, one sweep at a time, and comes back to
 * those that fail. Safe for use by many threads; a request never waits.
 */
final class Sweeper implements AutoCloseable {

  /** What to look at. */
  sealed interface Sweep {

    /** A person who was forgotten, and who else may have been kept for that person. */
    record OfForgotten(Person person) implements Sweep {}

    /** A person for whom a key was made. */
    record OfSuspect(Person person) implements Sweep {}

    /** Everybody who has a key. */
    record OfEverybody() implements Sweep {}
  }

  private static final Logger LOG = LoggerFactory.getLogger(Sweeper.class);

  private static final int PENDING_MAX = 10_000;

  private final Consumer<Sweep> sweeping;
  private final Duration againAfter;
  private final Set<Sweep> pending = ConcurrentHashMap.newKeySet();
  private final ScheduledThreadPoolExecutor thread =
      new ScheduledThreadPoolExecutor(1, Thread.ofVirtual().name("person-key-sweeper").factory());

  /**
   * Sweeps by {@code sweeping}, which may fail.
   *
   * @param againAfter when to come back to a sweep that failed
   */
  Sweeper(Consumer<Sweep> sweeping, Duration againAfter) {
    this.sweeping = sweeping;
    this.againAfter = againAfter;
    thread.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
  }

  /** Looks at somebody for whom a key was made. */
  void suspect(Person person) {
    request(new Sweep.OfSuspect(person));
  }

  /** Sweeps soon, once, however often that is asked for meanwhile. */
  void request(Sweep sweep) {
    schedule(sweep, Duration.ZERO);
  }

  private synchronized void schedule(Sweep sweep, Duration delay) {
    if (thread.isShutdown()) {
      // The next start sweeps everybody.
      return;
    }
    Sweep next = sweep;
    if (pending.size() >= PENDING_MAX) {
      // Too many to remember one by one.
      thread.getQueue().clear();
      pending.clear();
      next = new Sweep.OfEverybody();
    }
    Sweep scheduled = next;
    if (pending.add(scheduled)) {
      thread.schedule(() -> run(scheduled), delay.toMillis(), TimeUnit.MILLISECONDS);
    }
  }

  private void run(Sweep sweep) {
    // Taken off first: what is asked for while we sweep may have come too late for this sweep.
    pending.remove(sweep);
    try {
      sweeping.accept(sweep);
    } catch (RuntimeException e) {
      if (thread.isShutdown()) {
        return;
      }
      LOG.warn("A forgotten person's keys could not be looked after yet: {}", e.toString());
      schedule(sweep, againAfter);
    }
  }

  @Override
  public synchronized void close() {
    thread.shutdownNow();
  }
}
