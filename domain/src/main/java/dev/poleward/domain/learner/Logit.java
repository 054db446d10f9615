package dev.poleward.domain.learner;

/** The logistic scale: what adds up there stays a probability. */
final class Logit {

  private Logit() {}

  /** The probability of a logit. */
  static double chance(double logit) {
    return 1 / (1 + StrictMath.exp(-logit));
  }

  /**
   * The logit of a probability.
   *
   * @param chance strictly between 0 and 1
   */
  static double of(double chance) {
    return StrictMath.log(chance / (1 - chance));
  }
}
