package dev.poleward.service.projection;

import dev.poleward.service.journal.Place;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * How far each partition has been applied, and who waits for it to go further. Safe for use by many
 * threads.
 */
final class AppliedOffsets {

  /** One partition: the next offset to apply, and waiters, the least offset first. */
  private static final class Partition {
    private final PriorityQueue<Waiter> waiters =
        new PriorityQueue<>(Comparator.comparingLong(Waiter::next));
    private long next;
  }

  private record Waiter(long next, CompletableFuture<Boolean> reached) {}

  private final Partition[] partitions;

  /** Starts where the rows are. */
  AppliedOffsets(long[] next) {
    partitions = new Partition[next.length];
    for (int i = 0; i < next.length; i++) {
      partitions[i] = new Partition();
      partitions[i].next = next[i];
    }
  }

  /** Says that all before {@code next} is applied. */
  void reached(int partition, long next) {
    Partition state = partitions[partition];
    synchronized (state) {
      state.next = next;
      while (!state.waiters.isEmpty() && state.waiters.peek().next() <= next) {
        state.waiters.poll().reached().complete(true);
      }
    }
  }

  /** The next offset to apply of each partition. */
  long[] next() {
    long[] next = new long[partitions.length];
    for (int i = 0; i < partitions.length; i++) {
      synchronized (partitions[i]) {
        next[i] = partitions[i].next;
      }
    }
    return next;
  }

  /** How many wait. */
  int waiting() {
    int waiting = 0;
    for (Partition partition : partitions) {
      synchronized (partition) {
        waiting += partition.waiters.size();
      }
    }
    return waiting;
  }

  /** Waits until all these places are applied; false when not in time. */
  boolean await(List<Place> places, Duration wait) {
    long deadline = System.nanoTime() + wait.toNanos();
    long[] targets = new long[partitions.length];
    places.forEach(
        place ->
            targets[place.partition()] = Math.max(targets[place.partition()], place.offset() + 1));
    for (int partition = 0; partition < targets.length; partition++) {
      long left = Math.max(0, deadline - System.nanoTime());
      if (!await(partition, targets[partition], left)) {
        return false;
      }
    }
    return true;
  }

  /** Waits until all before {@code next} of a partition is applied; false when not in time. */
  boolean await(int partition, long next, long waitNanos) {
    Waiter waiter = new Waiter(next, new CompletableFuture<>());
    Partition state = partitions[partition];
    synchronized (state) {
      if (state.next >= next) {
        return true;
      }
      state.waiters.add(waiter);
    }
    try {
      return waiter.reached().get(waitNanos, TimeUnit.NANOSECONDS);
    } catch (TimeoutException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    } catch (ExecutionException e) {
      throw new IllegalStateException("waiters are only ever completed", e);
    } finally {
      synchronized (state) {
        state.waiters.remove(waiter);
      }
    }
  }
}
