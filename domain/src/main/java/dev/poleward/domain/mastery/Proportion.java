package dev.poleward.domain.mastery;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Some made and some missed, with what that says of the share that would be made in the long run.
 * Fractions of a rep are allowed: they are weights, and count as that much of a rep.
 *
 * @param made how many were made, at least 0
 * @param missed how many were not, at least 0
 */
public record Proportion(double made, double missed) {

  /** Refuses what cannot be counted. */
  public Proportion {
    if (!(made >= 0 && missed >= 0 && made + missed < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("cannot be counted: " + made + " and " + missed);
    }
  }

  /** Made and missed together. */
  public double of() {
    return made + missed;
  }

  /** The share made, 0 to 1; a half of none at all, where either is as likely. */
  public double share() {
    return of() > 0 ? made / of() : 0.5;
  }

  /** The share with score limits, without continuity correction (Wilson 1927, JASA 22:209). */
  public Estimate wilson(Confidence confidence) {
    double squared = confidence.z() * confidence.z();
    double spread = of() > 0 ? made / of() * missed : 0;
    double half = confidence.z() * Math.sqrt(spread + squared / 4);
    double centre = made + squared / 2;
    return new Estimate(
        share(),
        // Rounding would leave 1e-17 of a lower limit where none was made.
        made == 0 ? 0 : (centre - half) / (of() + squared),
        missed == 0 ? 1 : (centre + half) / (of() + squared));
  }

  /**
   * The share with the equal-tailed limits of Jeffreys' prior, Beta(½, ½), and no lower limit where
   * none was made, no upper one where none was missed (Brown, Cai, DasGupta 2001, Statistical
   * Science 16:101).
   */
  public Estimate jeffreys(Confidence confidence) {
    BetaDistribution posterior = BetaDistribution.of(made + 0.5, missed + 0.5);
    double tail = (1 - confidence.level()) / 2;
    return new Estimate(
        share(),
        made == 0 ? 0 : posterior.inverseCumulativeProbability(tail),
        missed == 0 ? 1 : posterior.inverseSurvivalProbability(tail));
  }
}
