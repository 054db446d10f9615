package dev.poleward.domain.judgement;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/** How likely rules that count move dogs on, by formulas that do not ask the rules themselves. */
final class CountingChances {

  private CountingChances() {}

  /**
   * By the first {@code n} reps, exactly. Trying further makes it likelier.
   *
   * @param share of clean reps, 0 to 1
   */
  static double atFirst(KOfN rule, double share) {
    return BinomialDistribution.of(rule.n(), share).survivalProbability(rule.k() - 1);
  }

  /**
   * Within so many reps, exactly: after {@code n} of them the run ends there for the first time
   * when a miss and as many clean ones as it takes follow on none until then.
   *
   * @param share of clean reps, 0 to 1
   */
  static double within(RunOfClean rule, int reps, double share) {
    int length = rule.length();
    double[] chance = new double[Math.max(reps, length) + 1];
    double run = StrictMath.pow(share, length);
    chance[length] = run;
    for (int n = length + 1; n <= reps; n++) {
      chance[n] = chance[n - 1] + (1 - chance[n - length - 1]) * (1 - share) * run;
    }
    return reps < length ? 0 : chance[reps];
  }

  /**
   * How many reps a run takes on average (Feller 1968, An Introduction to Probability Theory,
   * XIII.7).
   *
   * @param share of clean reps, above 0; at 1 it takes the run's length
   */
  static double repsExpected(RunOfClean rule, double share) {
    // 1/p + 1/p² + … + 1/pʳ: the closed form is 0/0 at 1.
    double expected = 0;
    for (int clean = 0; clean < rule.length(); clean++) {
      expected = (expected + 1) / share;
    }
    return expected;
  }
}
