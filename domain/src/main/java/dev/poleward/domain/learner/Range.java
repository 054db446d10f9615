package dev.poleward.domain.learner;

/**
 * Between what a parameter may lie, ends included.
 *
 * @param least smallest value
 * @param most greatest value
 */
record Range(double least, double most) {

  /** Refuses a value that lies outside. */
  void check(String name, double value) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          name + " lies between " + least + " and " + most + ": " + value);
    }
  }

  /** The nearest value inside. */
  double nearest(double value) {
    return Math.clamp(value, least, most);
  }
}
