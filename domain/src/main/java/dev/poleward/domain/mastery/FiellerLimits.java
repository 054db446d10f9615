package dev.poleward.domain.mastery;

/**
 * Limits of a threshold by Fieller's theorem (1954, Journal of the Royal Statistical Society B
 * 16:175): all places at which the curve's height is no further from the level than its own error
 * allows.
 *
 * <p>Where the slope itself is in doubt, these places are two rays or all there are. Of two rays
 * the one that holds the threshold belongs to curves that slope as the fit does, the other to
 * curves that slope the other way, and only the first is given.
 */
final class FiellerLimits {

  private FiellerLimits() {}

  /** The limits of the place at which a curve passes a height in logits. */
  static Limits of(LogisticFit fit, double height) {
    double squared = Confidence.OF_95_PERCENT.cut();
    double above = fit.intercept() - height;
    // The places x with a x² + 2 b x + c <= 0.
    double a = fit.slope() * fit.slope() - squared * fit.varianceOfSlope();
    double b = above * fit.slope() - squared * fit.covariance();
    double c = above * above - squared * fit.varianceOfIntercept();
    double discriminant = b * b - a * c;
    if (!(discriminant > 0) || a == 0) {
      return Limits.NONE;
    }
    double far = -(b + Math.copySign(Math.sqrt(discriminant), b));
    double one = far / a;
    double other = c / far;
    double least = Math.min(one, other);
    double greatest = Math.max(one, other);
    if (a > 0) {
      return new Limits(least, greatest);
    }
    return fit.placeAt(height) <= least ? new Limits(null, least) : new Limits(greatest, null);
  }
}
