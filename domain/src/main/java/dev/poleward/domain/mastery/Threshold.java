package dev.poleward.domain.mastery;

import org.jspecify.annotations.Nullable;

/**
 * The size of the entry angle at which the chance of success has fallen to the level asked for, or
 * why there is none. Degrees. Limits are of 95%; one that does not exist, or that lies outside 0 to
 * less than 180 degrees, is null.
 */
public sealed interface Threshold {

  /**
   * It lies among the angles that were tried.
   *
   * @param degrees the size of the angle
   * @param lower the lower limit
   * @param upper the upper limit, which may lie beyond the angles tried
   */
  record Estimated(
      double degrees, @Nullable Double lower, @Nullable Double upper, LimitMethod limits)
      implements Threshold {}

  /**
   * The curve is above the level at every angle tried.
   *
   * @param greatestTried the size of the largest
   * @param lower the lower limit, if it lies among the angles tried
   */
  record BeyondTried(double greatestTried, @Nullable Double lower, LimitMethod limits)
      implements Threshold {}

  /**
   * The curve is below the level at every angle tried.
   *
   * @param leastTried the size of the smallest
   * @param upper the upper limit, if it lies among the angles tried
   */
  record BelowTried(double leastTried, @Nullable Double upper, LimitMethod limits)
      implements Threshold {}

  /** Fewer than five reps, or one angle, or next to nothing left of the weights. */
  record NotEnoughReps() implements Threshold {}

  /** The curve does not fall with the size of the angle. */
  record NoFall() implements Threshold {}

  /** A fall by less than this over all angles tried, in logits, is rounding. */
  double LEAST_FALL = 1e-9;

  /** The threshold of a Firth fit to trials at sizes of angles. */
  static Threshold of(Trials trials, LogisticFit fit, double level, LimitMethod method) {
    Range tried = new Range(trials.place(0), trials.place(trials.size() - 1));
    if (!(fit.slope() * (tried.least() - tried.greatest()) > LEAST_FALL)) {
      return new NoFall();
    }
    double height = Logit.of(level);
    double degrees = fit.placeAt(height);
    Limits limits = limits(trials, fit, height, method).within(Range.SIZES);
    if (degrees > tried.greatest()) {
      return new BeyondTried(tried.greatest(), limits.within(tried).lower(), method);
    }
    if (degrees < tried.least()) {
      return new BelowTried(tried.least(), limits.within(tried).upper(), method);
    }
    return new Estimated(degrees, limits.lower(), limits.upper(), method);
  }

  private static Limits limits(Trials trials, LogisticFit fit, double height, LimitMethod method) {
    return switch (method) {
      case PROFILE -> ProfileLimits.of(trials, fit, height, Range.SIZES);
      case FIELLER -> FiellerLimits.of(fit, height);
      case DELTA -> DeltaLimits.of(fit, height);
    };
  }
}
