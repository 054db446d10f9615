package dev.poleward.domain.mastery;

/**
 * Masses at the places of trials: their sum, their centre and how they are spread about it. First
 * every mass is put, then {@link #settle} is called. For one thread; used again and again.
 */
final class Moments {

  private final Trials trials;
  private final double[] masses;
  private double sum;
  private double centre;
  private double spread;

  Moments(Trials trials) {
    this.trials = trials;
    this.masses = new double[trials.size()];
  }

  void put(int index, double mass) {
    masses[index] = mass;
  }

  void settle() {
    sum = 0;
    double weighted = 0;
    for (int i = 0; i < masses.length; i++) {
      sum += masses[i];
      weighted += masses[i] * trials.place(i);
    }
    centre = weighted / sum;
    spread = 0;
    for (int i = 0; i < masses.length; i++) {
      spread += masses[i] * arm(i) * arm(i);
    }
  }

  double sum() {
    return sum;
  }

  double centre() {
    return centre;
  }

  /** The sum of masses times squared arms. */
  double spread() {
    return spread;
  }

  /** How far a place lies from the centre. */
  double arm(int index) {
    return trials.place(index) - centre;
  }

  /** The part of the two coefficients that a place decides, 0 to 1: all places share 2. */
  double leverage(int index) {
    return masses[index] * (1 / sum + arm(index) * arm(index) / spread);
  }
}
