package dev.poleward.domain.judgement;

/**
 * The first rep of a drill after some days without it.
 *
 * @param daysAway since the last rep before, at least 0
 * @param weight how much it counts, above 0; 1 for a whole rep
 */
public record Return(double daysAway, boolean clean, double weight) {

  /** Refuses what cannot be. */
  public Return {
    if (!(daysAway >= 0 && daysAway < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("not so many days: " + daysAway);
    }
    if (!(weight > 0 && weight < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("no weight: " + weight);
    }
  }
}
