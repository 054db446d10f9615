package dev.poleward.service.journal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * A journal for tests that need no broker: keeps the same promises except to outlive the process.
 * Safe for use by many threads.
 */
public final class MemoryJournal implements Journal {

  private final ReentrantLock lock = new ReentrantLock();
  private final Condition changed = lock.newCondition();
  private final List<List<JournalRecord>> partitions = new ArrayList<>();
  private @Nullable AppendOutcome refusal;
  private boolean closed;

  /** An empty journal. */
  public MemoryJournal() {
    for (int partition = 0; partition < PARTITIONS; partition++) {
      partitions.add(new ArrayList<>());
    }
  }

  @Override
  public AppendOutcome append(List<Entry> entries, Duration wait) {
    requireOneClub(entries);
    lock.lock();
    try {
      if (closed) {
        return new AppendOutcome.Unavailable("the service is stopping", Duration.ofSeconds(1));
      }
      if (refusal != null) {
        return refusal;
      }
      var places = new ArrayList<Place>();
      for (var entry : entries) {
        int partition = partitionOf(entry.club());
        var records = partitions.get(partition);
        var place = new Place(partition, records.size());
        records.add(new JournalRecord.Recorded(place, entry));
        places.add(place);
      }
      changed.signalAll();
      return new AppendOutcome.Appended(List.copyOf(places));
    } finally {
      lock.unlock();
    }
  }

  /** From now on appends write nothing and come out so; null: they are taken again. */
  public void refuseWith(@Nullable AppendOutcome outcome) {
    lock.lock();
    try {
      refusal = outcome;
    } finally {
      lock.unlock();
    }
  }

  /** Puts in something that is no event of ours, as another program might. */
  public Place appendForeign(int partition, String why) {
    lock.lock();
    try {
      var records = partitions.get(partition);
      var place = new Place(partition, records.size());
      records.add(new JournalRecord.Foreign(place, why));
      changed.signalAll();
      return place;
    } finally {
      lock.unlock();
    }
  }

  @Override
  public int partitionOf(String club) {
    return Partitioning.partitionOf(club);
  }

  @Override
  public long[] ends(Duration wait) {
    lock.lock();
    try {
      return partitions.stream().mapToLong(List::size).toArray();
    } finally {
      lock.unlock();
    }
  }

  @Override
  public Tail tail(List<Integer> which, long[] from) {
    return new MemoryTail(List.copyOf(which), from.clone());
  }

  @Override
  public void close() {
    lock.lock();
    try {
      closed = true;
    } finally {
      lock.unlock();
    }
  }

  private static void requireOneClub(List<Entry> entries) {
    if (entries.isEmpty()
        || entries.size() > 1_000
        || entries.stream().map(Entry::club).distinct().count() != 1) {
      throw new IllegalArgumentException("1 to 1,000 entries of one club are appended at a time");
    }
  }

  private final class MemoryTail implements Tail {

    private static final int RECORDS_MAX = 2_000;

    private final List<Integer> which;
    private final long[] next;
    private boolean woken;

    MemoryTail(List<Integer> which, long[] from) {
      this.which = which;
      this.next = from;
    }

    @Override
    public List<JournalRecord> poll(Duration wait) {
      lock.lock();
      try {
        long left = wait.toNanos();
        var found = take();
        while (found.isEmpty() && left > 0 && !woken) {
          left = changed.awaitNanos(Math.min(left, TimeUnit.SECONDS.toNanos(60)));
          found = take();
        }
        woken = false;
        return found;
      } catch (InterruptedException stopping) {
        Thread.currentThread().interrupt();
        return List.of();
      } finally {
        lock.unlock();
      }
    }

    private List<JournalRecord> take() {
      var found = new ArrayList<JournalRecord>();
      for (int partition : which) {
        var records = partitions.get(partition);
        if (next[partition] > records.size()) {
          throw new JournalException(
              "The journal does not reach where reading was to go on, at " + Arrays.toString(next));
        }
        while (next[partition] < records.size() && found.size() < RECORDS_MAX) {
          found.add(records.get((int) next[partition]));
          next[partition]++;
        }
      }
      return found;
    }

    @Override
    public void wakeup() {
      lock.lock();
      try {
        woken = true;
        changed.signalAll();
      } finally {
        lock.unlock();
      }
    }

    @Override
    public void close() {}
  }
}
