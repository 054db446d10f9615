package dev.poleward.domain.mastery;

/** Limits of a threshold by the delta method: the threshold and a multiple of its error. */
final class DeltaLimits {

  private DeltaLimits() {}

  /** The limits of the place at which a curve passes a height in logits. */
  static Limits of(LogisticFit fit, double height) {
    double place = fit.placeAt(height);
    double half = Confidence.OF_95_PERCENT.z() * standardError(fit, place);
    return new Limits(place - half, place + half);
  }

  /** The standard error of the place that a curve passes a height at. */
  static double standardError(LogisticFit fit, double place) {
    return Math.sqrt(fit.varianceAt(place)) / Math.abs(fit.slope());
  }
}
