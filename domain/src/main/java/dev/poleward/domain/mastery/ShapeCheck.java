package dev.poleward.domain.mastery;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether the isotonic fit tells another story than the logistic curve.
 *
 * <p>A falling curve is one of the sequences that the isotonic fit was chosen from, so the isotonic
 * fit is the likelier one. Twice the logarithm of how much likelier is held against the chi-square
 * distribution with as many degrees of freedom as there are different levels. No theorem says that
 * it has that distribution; the rule is ours, and its share of false alarms was tried out on
 * simulated dogs: see docs/mathematics.md.
 */
final class ShapeCheck {

  /** How rarely chance alone may go so far, by the chi-square distribution. */
  private static final double CHANCE_MAX = 0.01;

  private ShapeCheck() {}

  /**
   * Whether the two differ by more than chance explains.
   *
   * @param isotonic the chance of success at each place, never going up
   */
  static boolean disagree(Trials trials, LogisticFit fit, double[] isotonic) {
    double ratio = 0;
    int levels = 0;
    for (int i = 0; i < isotonic.length; i++) {
      double height = fit.intercept() + fit.slope() * trials.place(i);
      ratio += 2 * times(trials.made(i), isotonic[i], Logit.inverse(height));
      ratio += 2 * times(trials.missed(i), 1 - isotonic[i], Logit.inverse(-height));
      if (i == 0 || isotonic[i] != isotonic[i - 1]) {
        levels++;
      }
    }
    return ratio > levels
        && ChiSquaredDistribution.of(levels).survivalProbability(ratio) < CHANCE_MAX;
  }

  private static double times(double weight, double chance, double otherChance) {
    // A miss of no weight to speak of leaves a share that rounds to 1.
    return weight == 0 || chance == 0 ? 0 : weight * StrictMath.log(chance / otherChance);
  }
}
