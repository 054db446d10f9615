package dev.poleward.service;

import dev.poleward.service.journal.AppendOutcome;
import dev.poleward.service.journal.AppendOutcome.Appended;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.Tail;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;

/** A journal whose appends are timed. As safe for use by many threads as the one it times. */
final class MeteredJournal implements Journal {

  private final Journal journal;
  private final Timer durable;
  private final Timer notKept;

  MeteredJournal(Journal journal, MeterRegistry metrics) {
    this.journal = journal;
    this.durable = timer(metrics, "durable");
    this.notKept = timer(metrics, "not-kept");
  }

  private static Timer timer(MeterRegistry metrics, String outcome) {
    return Timer.builder("poleward.journal.append")
        .description("Time until an append is durable, or given up")
        .tag("outcome", outcome)
        .publishPercentileHistogram()
        .minimumExpectedValue(Duration.ofNanos(100_000))
        .maximumExpectedValue(Duration.ofSeconds(30))
        .register(metrics);
  }

  @Override
  public AppendOutcome append(List<Entry> entries, Duration wait) {
    return timed(() -> journal.append(entries, wait));
  }

  private AppendOutcome timed(Supplier<AppendOutcome> append) {
    long begun = System.nanoTime();
    AppendOutcome outcome = append.get();
    Timer timer = outcome instanceof Appended ? durable : notKept;
    timer.record(Duration.ofNanos(System.nanoTime() - begun));
    return outcome;
  }

  @Override
  public int partitionOf(String club) {
    return journal.partitionOf(club);
  }

  @Override
  public long[] ends(Duration wait) {
    return journal.ends(wait);
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
