package dev.poleward.domain.care;

import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;

/**
 * Load by now.
 *
 * @param today on the day
 * @param week in the last seven days, the day itself among them
 * @param before in the four weeks before those
 */
public record LoadSeen(Load today, Load week, Load before) {

  /** Days of a week, as load is counted. */
  static final int WEEK = 7;

  private static final int WEEKS_BEFORE = 4;

  static LoadSeen of(List<PlacedRep> reps, CareQuestion question) {
    Instant week = question.beginOfLast(WEEK);
    return new LoadSeen(
        Load.of(reps, question.beginOfLast(1), question.end()),
        Load.of(reps, week, question.end()),
        Load.of(reps, question.beginOfLast(WEEK * (1 + WEEKS_BEFORE)), week));
  }

  /** Gaps a week, on the mean of the four weeks before. */
  public double usualGaps() {
    return (double) before.gaps() / WEEKS_BEFORE;
  }
}
