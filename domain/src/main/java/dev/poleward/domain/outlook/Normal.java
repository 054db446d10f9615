package dev.poleward.domain.outlook;

/**
 * What is held of a number: about so much, give or take.
 *
 * @param mean the middle
 * @param deviation standard deviation, above 0
 */
public record Normal(double mean, double deviation) {

  /** Where nothing is known of a trait but what the population is. */
  static final Normal STANDARD = new Normal(0, 1);

  /** Refuses what is no distribution. */
  public Normal {
    if (!(deviation > 0 && Double.isFinite(mean) && Double.isFinite(deviation))) {
      throw new IllegalArgumentException("no distribution: " + mean + " and " + deviation);
    }
  }

  double variance() {
    return deviation * deviation;
  }

  /** Minus half the square of how far a value is off, in deviations. */
  double logHeight(double value) {
    double off = (value - mean) / deviation;
    return -off * off / 2;
  }
}
