package dev.poleward.domain.judgement;

/**
 * So many clean in a row. Holds at a miss, which begins the count anew.
 *
 * @param length how many, from 1
 */
public record RunOfClean(int length) implements MovingOnTest {

  /** Refuses what is no test. */
  public RunOfClean {
    if (length < 1) {
      throw new IllegalArgumentException("no run: " + length);
    }
  }

  @Override
  public RunEvidence begun() {
    return new RunEvidence(this, 0, 0);
  }

  /**
   * How likely a dog is moved on within so many reps, exactly: after {@code n} of them the run ends
   * there for the first time when a miss and {@code length} clean ones follow on none until then.
   *
   * @param share of clean reps, 0 to 1
   */
  public double chanceWithin(int reps, double share) {
    double[] chance = new double[Math.max(reps, length) + 1];
    double run = StrictMath.pow(share, length);
    chance[length] = run;
    for (int n = length + 1; n <= reps; n++) {
      chance[n] = chance[n - 1] + (1 - chance[n - length - 1]) * (1 - share) * run;
    }
    return reps < length ? 0 : chance[reps];
  }

  /**
   * How many reps it takes on average (Feller 1968, An Introduction to Probability Theory, XIII.7).
   *
   * @param share of clean reps, above 0; at 1 it takes {@code length}
   */
  public double repsExpected(double share) {
    // 1/p + 1/p² + … + 1/pʳ: the closed form is 0/0 at 1.
    double expected = 0;
    for (int clean = 0; clean < length; clean++) {
      expected = (expected + 1) / share;
    }
    return expected;
  }
}
