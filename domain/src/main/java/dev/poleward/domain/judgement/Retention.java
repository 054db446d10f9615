package dev.poleward.domain.judgement;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a dog forgets: the odds that its first rep after d days is clean fall as a power of 1 + d
 * (Anderson, Schooler 1991, Psychological Science 2:396). What is held of it is normal in both
 * numbers.
 *
 * @param logitAtOnce logit of the share after no time at all
 * @param fall by which the logit falls each time 1 + d grows e-fold; at most 0 for a dog that shows
 *     no forgetting
 * @param varianceAtOnce of the first
 * @param covariance of both
 * @param varianceOfFall of the second
 */
public record Retention(
    double logitAtOnce,
    double fall,
    double varianceAtOnce,
    double covariance,
    double varianceOfFall) {

  /** Nothing is said of longer times. */
  public static final double DAYS_MAX = 730;

  private static final double DEVIATION_AT_ONCE = 1;
  private static final double DEVIATION_OF_FALL = 0.25;

  /**
   * Of a dog of which nothing is known, nor of its club: 0.9 at once, 0.8 after 30 days; of dogs,
   * two in three lie between 0.77 and 0.96 at once [C].
   */
  public static final Retention USUAL = through(0.9, 0.8, 30);

  private static Retention through(double atOnce, double later, double days) {
    double logitAtOnce = logit(atOnce);
    return new Retention(
        logitAtOnce,
        (logitAtOnce - logit(later)) / StrictMath.log1p(days),
        DEVIATION_AT_ONCE * DEVIATION_AT_ONCE,
        0,
        DEVIATION_OF_FALL * DEVIATION_OF_FALL);
  }

  /**
   * The likeliest after seeing a dog's returns, given what was expected: the less is seen, the more
   * it is what was expected.
   *
   * @param returns in a fixed order; may be none
   * @param expected of the dog before; its variances above 0
   */
  public static Retention fitted(List<Return> returns, Retention expected) {
    if (returns.isEmpty()) {
      return expected;
    }
    Hill.Place top = new RetentionHill(returns, expected).top();
    double det = top.byXX() * top.byYY() - top.byXY() * top.byXY();
    return new Retention(top.x(), top.y(), -top.byYY() / det, top.byXY() / det, -top.byXX() / det);
  }

  /** The expected share of clean first reps after so many days, with limits. */
  public Estimate after(double days, Confidence confidence) {
    double time = StrictMath.log1p(days);
    double logit = logitAtOnce - fall * time;
    double half = confidence.z() * Math.sqrt(Math.max(0, varianceAfter(days)));
    return new Estimate(chance(logit), chance(logit - half), chance(logit + half));
  }

  /** Variance of the logit of that share. */
  double varianceAfter(double days) {
    double time = StrictMath.log1p(days);
    return varianceAtOnce - 2 * time * covariance + time * time * varianceOfFall;
  }

  /** The expected share of clean first reps after so many days. */
  public double shareAfter(double days) {
    return chance(logitAtOnce - fall * StrictMath.log1p(days));
  }

  /**
   * After how many days without practice the expected share falls below a level: 0 when it is there
   * already, nothing when it does not within {@link #DAYS_MAX}.
   *
   * @param level above 0 and below 1
   */
  public OptionalDouble dueAfterDays(double level) {
    if (shareAfter(0) < level) {
      return OptionalDouble.of(0);
    }
    if (!(shareAfter(DAYS_MAX) < level)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(StrictMath.expm1((logitAtOnce - logit(level)) / fall));
  }

  static double logit(double share) {
    return StrictMath.log(share / (1 - share));
  }

  static double chance(double logit) {
    double small = StrictMath.exp(-Math.abs(logit));
    return logit >= 0 ? 1 / (1 + small) : small / (1 + small);
  }
}
