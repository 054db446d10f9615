package dev.poleward.domain.care;

/**
 * Parts of what is usual that a dog is held to on its return: it begins with few reps and none
 * round a sharp bend.
 *
 * @param load 0 to 1
 * @param sharpBends 0 to 1
 */
record EasedBack(double load, double sharpBends) {

  /** Nothing is held back. */
  static final EasedBack WHOLLY = new EasedBack(1, 1);

  /** It does not run. */
  static final EasedBack NOT_YET = new EasedBack(0, 0);

  /** Part of the usual load with which a dog comes back [C]. */
  private static final double FROM = 1.0 / 3;

  /**
   * So long after a return.
   *
   * @param days since, from 0
   * @param until all is allowed again, days
   */
  static EasedBack since(long days, int until) {
    return days >= until
        ? WHOLLY
        : new EasedBack(FROM + (1 - FROM) * days / until, (double) days / until);
  }

  boolean isHeld() {
    return load < 1;
  }

  boolean isHeldMoreThan(EasedBack other) {
    return load < other.load;
  }

  int loadPercent() {
    return (int) Math.round(100 * load);
  }

  int sharpBendsPercent() {
    return (int) Math.round(100 * sharpBends);
  }
}
