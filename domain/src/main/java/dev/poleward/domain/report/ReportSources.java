package dev.poleward.domain.report;

import dev.poleward.domain.care.CareLimits;
import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.Conditions;
import dev.poleward.domain.care.Trained;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.pace.ClubTimings;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a report is made from: one record through the eyes of one view, which ends with the last day
 * of the span. So members, programmes, rests, homework and all the rest are as they were then.
 *
 * @param placement in that view
 * @param registry in that view
 * @param limits of the club, for care
 * @param repsOf the reps of a dog in that view, ascending by (time, id)
 * @param retention how its dogs are expected to forget
 * @param timings of the club, as care looks at them
 */
public record ReportSources(
    Facts facts,
    Placement placement,
    Registry registry,
    DaySpan span,
    CareLimits limits,
    Function<String, List<PlacedRep>> repsOf,
    ExpectedRetention retention,
    ClubTimings timings) {

  /** The same with the timings that care looks at, read once for all dogs. */
  public ReportSources(
      Facts facts,
      Placement placement,
      Registry registry,
      DaySpan span,
      CareLimits limits,
      Function<String, List<PlacedRep>> repsOf,
      ExpectedRetention retention) {
    this(
        facts,
        placement,
        registry,
        span,
        limits,
        repsOf,
        retention,
        Trained.timings(placement, span.end()));
  }

  /**
   * The view that a report of a span is made in.
   *
   * @param asked what was asked for
   */
  public static View view(View asked, DaySpan span) {
    Instant asOf = asked.asOf();
    return new View(earlier(asOf, span.last()), asked.knownAt());
  }

  private static Instant earlier(@Nullable Instant one, Instant other) {
    return one == null || one.isAfter(other) ? other : one;
  }

  /** Care is looked at on the last day of the span. */
  CareQuestion care() {
    return new CareQuestion(limits, Conditions.NOT_SAID, span.to(), span.zone());
  }

  /** What a dog did, as care looks at it. */
  Trained trained(String dog, List<PlacedRep> reps, List<Instant> slips) {
    return Trained.of(dog, reps, timings, slips);
  }
}
