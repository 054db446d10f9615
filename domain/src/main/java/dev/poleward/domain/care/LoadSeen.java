package dev.poleward.domain.care;

import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Load by now.
 *
 * @param today on the day
 * @param week in the last seven days, the day itself among them
 * @param before in the four weeks before those
 * @param line that the dog is used to; null where nobody knows
 */
public record LoadSeen(Load today, Load week, Load before, @Nullable UsualLine line) {

  /** Days of a week, as load is counted. */
  static final int WEEK = 7;

  /** Full weeks before it that say what was usual. */
  static final int WEEKS_BEFORE = 4;

  static LoadSeen of(List<PlacedRep> reps, CareQuestion question) {
    Instant week = question.beginOfLast(WEEK);
    return new LoadSeen(
        Load.of(reps, question.beginOfLast(1), question.end()),
        Load.of(reps, week, question.end()),
        Load.of(reps, question.beginOfLast(WEEK * (1 + WEEKS_BEFORE)), week),
        UsualLine.of(reps, question));
  }

  /** Gaps a week, on the mean of the four weeks before. */
  public double usualGaps() {
    return (double) before.gaps() / WEEKS_BEFORE;
  }
}
