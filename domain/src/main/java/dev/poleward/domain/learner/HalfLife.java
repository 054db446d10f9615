package dev.poleward.domain.learner;

/**
 * How much is left after some time of what is halved again and again. Remembers the answer to what
 * was asked last, because the reps of a session are evenly apart; what is remembered is what would
 * be computed. For one thread.
 */
final class HalfLife {

  private final double halfLife;
  private double askedLast = Double.NaN;
  private double leftLast;

  /**
   * A half-life.
   *
   * @param halfLife in any unit of time, above 0
   */
  HalfLife(double halfLife) {
    this.halfLife = halfLife;
  }

  /**
   * The part that is left, 0 to 1.
   *
   * @param time in the unit of the half-life, 0 or more
   */
  double left(double time) {
    if (time != askedLast) {
      leftLast = StrictMath.pow(0.5, time / halfLife);
      askedLast = time;
    }
    return leftLast;
  }
}
