package dev.poleward.service;

import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.JournalException;
import dev.poleward.service.projection.Projection;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import java.time.Duration;

/** What is measured when somebody looks: how far the rows are behind the journal. */
final class Gauges {

  private static final Duration LOOK_MAX = Duration.ofSeconds(2);

  private Gauges() {}

  static void register(MeterRegistry metrics, Journal journal, Projection projection) {
    Gauge.builder("poleward.projection.lag", () -> lag(journal, projection))
        .description("Records in the journal that this node has not applied yet")
        .strongReference(true)
        .register(metrics);
  }

  private static double lag(Journal journal, Projection projection) {
    try {
      long[] ends = journal.ends(LOOK_MAX);
      long[] next = projection.next();
      long behind = 0;
      for (int partition = 0; partition < ends.length; partition++) {
        behind += Math.max(0, ends[partition] - next[partition]);
      }
      return behind;
    } catch (JournalException e) {
      return Double.NaN;
    }
  }
}
