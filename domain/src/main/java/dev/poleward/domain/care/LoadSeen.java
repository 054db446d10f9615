package dev.poleward.domain.care;

import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.util.List;

/**
 * Load by now.
 *
 * @param today since the day began
 * @param week in the last seven days
 * @param before in the four weeks before those
 */
public record LoadSeen(Load today, Load week, Load before) {

  private static final Duration WEEK = Duration.ofDays(7);
  private static final int WEEKS_BEFORE = 4;

  static LoadSeen of(List<PlacedRep> reps, CareQuestion question) {
    return new LoadSeen(
        Load.of(reps, question.dawn(), question.at()),
        Load.of(reps, question.at().minus(WEEK), question.at()),
        Load.of(
            reps,
            question.at().minus(WEEK.multipliedBy(1 + WEEKS_BEFORE)),
            question.at().minus(WEEK)));
  }

  /** Gaps a week, on the mean of the four weeks before. */
  public double usualGaps() {
    return (double) before.gaps() / WEEKS_BEFORE;
  }
}
