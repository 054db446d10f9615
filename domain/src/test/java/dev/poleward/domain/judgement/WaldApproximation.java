package dev.poleward.domain.judgement;

/**
 * Wald's own formulas for the course of a sequential test, which take it to end on a boundary and
 * not beyond. Good to know before a programme is written; {@link ExactCourse} is exact.
 */
final class WaldApproximation {

  /** A root this near to 0 is 0: the balance goes nowhere on average. */
  private static final double LEVEL = 1e-9;

  private static final int BISECTIONS = 200;

  private WaldApproximation() {}

  /**
   * The course of one test.
   *
   * @param share of clean reps, 0 to 1
   */
  static CourseOfTest of(SequentialTest test, double share) {
    double upper = test.upperBoundary();
    double lower = test.lowerBoundary();
    if (share == 1) {
      return new CourseOfTest(1, upper / test.cleanStep());
    }
    if (share == 0) {
      return new CourseOfTest(0, lower / test.missStep());
    }
    double root = root(test, share);
    if (Math.abs(root) < LEVEL) {
      double squared =
          share * test.cleanStep() * test.cleanStep()
              + (1 - share) * test.missStep() * test.missStep();
      return new CourseOfTest(-lower / (upper - lower), -upper * lower / squared);
    }
    double moveOn =
        -StrictMath.expm1(root * lower)
            / (StrictMath.expm1(root * upper) - StrictMath.expm1(root * lower));
    double drift = share * test.cleanStep() + (1 - share) * test.missStep();
    return new CourseOfTest(moveOn, (moveOn * upper + (1 - moveOn) * lower) / drift);
  }

  /** The h other than 0, if there is one, at which the mean of exp(h · step) is 1. */
  private static double root(SequentialTest test, double share) {
    double level =
        StrictMath.log(-(1 - share) * test.missStep() / (share * test.cleanStep()))
            / (test.cleanStep() - test.missStep());
    if (Math.abs(level) < LEVEL) {
      return 0;
    }
    // Convex, 0 at 0 and least at half way or so: the other root lies beyond the least.
    double below = level;
    double above = 2 * level;
    while (meanLessOne(test, share, above) < 0) {
      above *= 2;
    }
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (below + above) / 2;
      if (meanLessOne(test, share, middle) < 0) {
        below = middle;
      } else {
        above = middle;
      }
    }
    return (below + above) / 2;
  }

  private static double meanLessOne(SequentialTest test, double share, double h) {
    return share * StrictMath.expm1(h * test.cleanStep())
        + (1 - share) * StrictMath.expm1(h * test.missStep());
  }
}
