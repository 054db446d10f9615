package dev.poleward.domain.mastery;

/** Probabilities on the scale where they have no ends. */
final class Logit {

  private Logit() {}

  /** The logit of a probability between 0 and 1. */
  static double of(double probability) {
    return StrictMath.log(probability / (1 - probability));
  }

  /** The probability of any height in logits, 0 to 1. */
  static double inverse(double height) {
    double small = StrictMath.exp(-Math.abs(height));
    return height >= 0 ? 1 / (1 + small) : small / (1 + small);
  }
}
