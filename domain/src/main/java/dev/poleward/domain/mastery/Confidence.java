package dev.poleward.domain.mastery;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How often two-sided limits are meant to hold the truth.
 *
 * @param level a share of all times, 0 &lt; level &lt; 1
 * @param z the standard normal quantile that leaves half the rest above it
 */
public record Confidence(double level, double z) {

  /** What every limit is given with; written out, so that the first curve waits for no library. */
  public static final Confidence OF_95_PERCENT = new Confidence(0.95, 1.959963984540054);

  /** Limits that hold the truth in that share of all times. */
  public static Confidence of(double level) {
    return new Confidence(
        level, NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - level) / 2));
  }

  /**
   * The chi-square quantile with one degree of freedom: what twice a log likelihood may fall by.
   */
  public double cut() {
    return z * z;
  }
}
