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
    return new Estimate(share(), least(made, half, squared), 1 - least(missed, half, squared));
  }

  /**
   * The lower score limit of the share that {@code some} are of all. Written without a difference,
   * so that it is never below 0 nor above the share, however little is there.
   */
  private double least(double some, double half, double squared) {
    return some == 0 ? 0 : some / of() * (some / (some + squared / 2 + half));
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
