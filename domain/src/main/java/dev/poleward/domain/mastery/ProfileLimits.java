package dev.poleward.domain.mastery;

import org.jspecify.annotations.Nullable;

/**
 * Limits of a threshold by its profile: for a place x, the highest penalised likelihood among the
 * curves that have their threshold at x. A limit is where it has fallen so far below the summit
 * that a chi-square quantile with one degree of freedom is reached (Venzon and Moolgavkar 1988,
 * Applied Statistics 37:87; with Firth's penalty, Heinze and Schemper 2002, Statistics in Medicine
 * 21:2409).
 *
 * <p>Going outwards from the threshold, the best curve through x becomes flatter. Either the
 * profile reaches the cut, or the curve is level before it does: beyond, it slopes the other way,
 * and that side has no limit. For one thread.
 */
final class ProfileLimits {

  /** Looks at a place, a side; six or so are what it takes. */
  private static final int LOOKS_MAX = 100;

  /** How near the root of twice the fall must come to the normal quantile. */
  private static final double NEAR = 1e-9;

  /** The same, where rounding lets it come no nearer. */
  private static final double NEAR_ENOUGH = 1e-5;

  private final Ascent ascent;
  private final LogisticFit fit;
  private final double height;
  private final double threshold;

  /** Of the best curve through the place that was looked at last. */
  private double slope;

  /** The root of twice the fall there, less the normal quantile: 0 at a limit. */
  private double excess;

  private ProfileLimits(Trials trials, LogisticFit fit, double height) {
    this.ascent = Ascent.of(trials, Penalty.FIRTH);
    this.fit = fit;
    this.height = height;
    this.threshold = fit.placeAt(height);
  }

  /**
   * The limits of the place at which the Firth fit of {@code trials} passes a height in logits.
   *
   * @param range where limits are looked for; a limit beyond it is none
   */
  static Limits of(Trials trials, LogisticFit fit, double height, Range range) {
    ProfileLimits profile = new ProfileLimits(trials, fit, height);
    double reach = Confidence.OF_95_PERCENT.z() * DeltaLimits.standardError(fit, profile.threshold);
    return new Limits(
        profile.limitTowards(range.least(), -reach), profile.limitTowards(range.greatest(), reach));
  }

  /** Newton's steps on the root, which is nearly straight; halving where they leave the bracket. */
  private @Nullable Double limitTowards(double end, double reach) {
    slope = fit.slope();
    if (!((end - threshold) * reach > 0) || !liesBeyond(end)) {
      return null;
    }
    double inside = threshold;
    double outside = end;
    double place = threshold + reach;
    for (int look = 0; look < LOOKS_MAX; look++) {
      if (!(Math.min(inside, outside) < place && place < Math.max(inside, outside))) {
        place = inside + (outside - inside) / 2;
      }
      if (liesBeyond(place)) {
        outside = place;
      } else {
        inside = place;
      }
      if (isFalling() && Math.abs(excess) < NEAR) {
        return place;
      }
      if (place == inside + (outside - inside) / 2) {
        break;
      }
      place -= excess / rate();
    }
    return isFalling() && Math.abs(excess) < NEAR_ENOUGH ? place : null;
  }

  /** Whether a place is at the limit or beyond it, or beyond where the best curve is level. */
  private boolean liesBeyond(double place) {
    slope = ascent.toTheTopOf(Line.throughHeight(height, place), slope);
    double fall = fit.penalisedLogLikelihood() - ascent.surface().value();
    excess = Math.sqrt(2 * Math.max(0, fall)) - Confidence.OF_95_PERCENT.z();
    return !isFalling() || excess >= 0;
  }

  /** Whether the best curve still slopes as the fit does. */
  private boolean isFalling() {
    return slope * fit.slope() > 0;
  }

  /** By how much the root grows with the place: at the top of a line, only the height pulls. */
  private double rate() {
    return slope * ascent.surface().scoreOfHeight() / (excess + Confidence.OF_95_PERCENT.z());
  }
}
