package dev.poleward.service.projection;

import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.service.codec.Ids;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.JournalRecord;
import dev.poleward.service.journal.JournalRecord.Foreign;
import dev.poleward.service.journal.JournalRecord.Recorded;
import dev.poleward.service.journal.Tail;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Folds one share of the partitions: reads, makes rows, writes them together with the new offsets,
 * and says how far it got. A thread of its own; only {@link #stop} comes from outside.
 */
final class FoldThread implements Runnable {

  private static final Logger LOG = LoggerFactory.getLogger(FoldThread.class);

  /** A longer backlog is worth flushing everything once at its end. */
  private static final long BACKLOG_TO_REBUILD = 20_000;

  private static final Duration POLL = Duration.ofMillis(500);

  private final List<Integer> partitions;
  private final Journal journal;
  private final Rows rows;
  private final AppliedOffsets applied;
  private final FoldListener listener;
  private final PendingRows pending;
  private final Fold fold;
  private final RowStore store;
  private final long[] ends;
  private final long[] next;
  private boolean isRebuilding;
  private volatile boolean stopping;
  private volatile @Nullable Tail tail;

  /**
   * A thread that has not begun.
   *
   * @param ends where the partitions ended when this was made: what lies before is a backlog
   */
  FoldThread(
      List<Integer> partitions,
      Journal journal,
      long[] ends,
      RowStore store,
      Rows rows,
      AppliedOffsets applied,
      FoldListener listener) {
    this.partitions = partitions;
    this.journal = journal;
    this.rows = rows;
    this.applied = applied;
    this.listener = listener;
    this.pending = new PendingRows(store);
    this.fold = new Fold(pending);
    this.store = store;
    this.ends = ends;
    this.next = applied.next();
    this.isRebuilding = backlog() > BACKLOG_TO_REBUILD;
  }

  @Override
  public void run() {
    try (Tail open = journal.tail(partitions, next)) {
      tail = open;
      while (!stopping) {
        List<JournalRecord> records = open.poll(POLL);
        if (!records.isEmpty()) {
          apply(records);
        }
      }
    } catch (RuntimeException | Error e) {
      if (!stopping) {
        LOG.error("Partitions {} are no longer applied: {}", partitions, e.getMessage(), e);
        listener.failed(e);
      }
    }
  }

  void stop() {
    stopping = true;
    Tail open = tail;
    if (open != null) {
      open.wakeup();
    }
  }

  private record Understood(Recorded recorded, TrainingEvent event) {}

  /** Applies records of these partitions, in their order, and writes what follows from them. */
  void apply(List<JournalRecord> records) {
    List<Understood> understood = new ArrayList<>(records.size());
    for (JournalRecord record : records) {
      switch (record) {
        case Recorded recorded -> {
          TrainingEvent event = understood(recorded);
          if (event != null) {
            understood.add(new Understood(recorded, event));
          }
        }
        case Foreign foreign -> passOver(foreign, foreign.why());
      }
    }
    lookAhead(understood);
    understood.forEach(
        each -> fold.apply(each.recorded().entry(), each.event(), each.recorded().place()));
    advance(records);
    listener.applied(records.size());
    understood.forEach(this::announceForgetting);
  }

  /** What every event asks of the rows, asked once for all of them. */
  private void lookAhead(List<Understood> understood) {
    List<Entry> entries = new ArrayList<>(understood.size());
    List<String> clubs = new ArrayList<>(understood.size());
    List<String> reps = new ArrayList<>(understood.size());
    for (Understood each : understood) {
      entries.add(each.recorded().entry());
      if (each.event() instanceof RepLogged rep) {
        clubs.add(each.recorded().entry().club());
        reps.add(rep.rep());
      }
    }
    pending.expectEvents(entries);
    pending.expectReps(clubs, reps);
  }

  private void advance(List<JournalRecord> records) {
    Set<Integer> touched = new TreeSet<>();
    for (JournalRecord record : records) {
      next[record.place().partition()] = record.place().offset() + 1;
      touched.add(record.place().partition());
    }
    for (int partition : touched) {
      pending.put(RowKeys.offset(partition), new RowOutput().number(next[partition]).done());
    }
    if (isRebuilding) {
      pending.writeUnlogged();
      endRebuilding();
    } else {
      pending.write();
    }
    for (int partition : touched) {
      applied.reached(partition, next[partition]);
    }
  }

  /** Once the backlog is behind: what is applied from now on may be acknowledged. */
  private void endRebuilding() {
    if (backlog() == 0) {
      store.flush();
      isRebuilding = false;
    }
  }

  private long backlog() {
    long backlog = 0;
    for (int partition : partitions) {
      backlog += Math.max(0, ends[partition] - next[partition]);
    }
    return backlog;
  }

  private void announceForgetting(Understood understood) {
    if (understood.event() instanceof PersonForgotten forgotten) {
      listener.forgotten(understood.recorded().entry().club(), forgotten.handler());
    }
  }

  /**
   * What others wrote into the topic must never stop us: it is passed over, but its offset counts.
   */
  private @Nullable TrainingEvent understood(Recorded recorded) {
    Entry entry = recorded.entry();
    if (!Ids.isRecordedId(entry.club()) || !Ids.isRecordedId(entry.envelope().id())) {
      passOver(recorded, "its club or id is no id");
      return null;
    }
    try {
      TrainingEvent event = rows.understood(entry);
      if (event == null) {
        passOver(recorded, "its type is not known to this version");
        return null;
      }
      if (!Fold.canFile(event)) {
        passOver(recorded, "it names something by what is no id");
        return null;
      }
      return event;
    } catch (RuntimeException e) {
      passOver(recorded, "its data is not what its type promises");
      return null;
    }
  }

  private void passOver(JournalRecord record, String why) {
    LOG.warn("Passed over the record at {}: {}", record.place(), why);
    listener.passedOver();
  }
}
