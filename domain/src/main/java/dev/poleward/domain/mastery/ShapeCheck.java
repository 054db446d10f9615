package dev.poleward.domain.mastery;

/**
 * Whether the isotonic fit tells another story than the logistic curve.
 *
 * <p>For each run of neighbouring places that the isotonic fit puts on one level, the level is held
 * against the curve's mean over the same trials, by the likelihood ratio of one share against
 * another. The runs were chosen after the fact, out of the k(k+1)/2 that k places have, so the 5%
 * of false alarms are shared out over all of those (Bonferroni): the largest ratio must exceed the
 * chi-square quantile for one share of them.
 */
final class ShapeCheck {

  private static final double FALSE_ALARMS = 0.05;

  private ShapeCheck() {}

  /** Whether the two differ by more than chance explains. */
  static boolean disagree(Trials trials, LogisticFit fit, double[] isotonic) {
    double runs = trials.size() * (trials.size() + 1) / 2.0;
    double cut = Confidence.of(1 - FALSE_ALARMS / runs).cut();
    int from = 0;
    while (from < isotonic.length) {
      int end = from;
      double made = 0;
      double missed = 0;
      double expected = 0;
      while (end < isotonic.length && isotonic[end] == isotonic[from]) {
        made += trials.made(end);
        missed += trials.missed(end);
        expected += trials.weight(end) * fit.at(trials.place(end));
        end++;
      }
      if (ratio(made, missed, expected) > cut) {
        return true;
      }
      from = end;
    }
    return false;
  }

  /** Twice the logarithm of the likelihood ratio of what was observed against what was expected. */
  private static double ratio(double made, double missed, double expected) {
    return 2 * (surprise(made, expected) + surprise(missed, Math.max(0, made + missed - expected)));
  }

  private static double surprise(double observed, double expected) {
    return observed == 0 ? 0 : observed * StrictMath.log(observed / expected);
  }
}
