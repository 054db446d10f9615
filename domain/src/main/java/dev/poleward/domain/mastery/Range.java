package dev.poleward.domain.mastery;

/** Places from {@code least} to {@code greatest}, both included. */
record Range(double least, double greatest) {

  /** Sizes of entry angles, 0 to less than 180 degrees. */
  static final Range SIZES = new Range(0, Math.nextDown(180.0));

  boolean holds(double place) {
    return place >= least && place <= greatest;
  }
}
