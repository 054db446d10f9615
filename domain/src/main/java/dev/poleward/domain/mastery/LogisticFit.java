package dev.poleward.domain.mastery;

/**
 * A curve logit p = intercept + slope · place that was fitted, with the inverse of the expected
 * information at it.
 *
 * @param intercept in logits
 * @param slope in logits a degree
 * @param penalisedLogLikelihood of the trials; without a penalty, their log likelihood
 */
public record LogisticFit(
    double intercept,
    double slope,
    double varianceOfIntercept,
    double covariance,
    double varianceOfSlope,
    double penalisedLogLikelihood) {

  /** The probability at a place. */
  public double at(double place) {
    return Logit.inverse(intercept + slope * place);
  }

  /** The probability at a place with limits that are symmetric in logits, pointwise, 95%. */
  public Estimate bandAt(double place) {
    double height = intercept + slope * place;
    double half = Confidence.OF_95_PERCENT.z() * Math.sqrt(varianceAt(place));
    return new Estimate(
        Logit.inverse(height), Logit.inverse(height - half), Logit.inverse(height + half));
  }

  /** Where the curve passes a height in logits; infinite or NaN where it is flat. */
  double placeAt(double height) {
    return (height - intercept) / slope;
  }

  /** The variance of the curve's height at a place, in squared logits. */
  double varianceAt(double place) {
    return Math.max(
        0, varianceOfIntercept + 2 * place * covariance + place * place * varianceOfSlope);
  }
}
