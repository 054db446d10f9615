package dev.poleward.domain.outlook;

import java.util.List;

/**
 * How the dogs of a club differ in one number, from what each one's record says of it with its
 * error: normal, about a mean and with a deviation that are the likeliest given what is expected of
 * clubs (empirical Bayes; Dempster, Laird, Rubin 1977, JRSS B 39:1). Of all that dogs differ by, a
 * quarter is expected to lie between clubs, and three quarters between the dogs of one, as if
 * {@value #DOGS_EXPECTED} dogs had said so [C]. So a club of few dogs is near the population, and
 * one of many is itself.
 */
final class NormalClub {

  /** Dogs that the expected deviation counts as. */
  static final double DOGS_EXPECTED = 6;

  private static final double BETWEEN_CLUBS = 0.25;

  private static final int ROUNDS = 60;

  private NormalClub() {}

  /** The club; {@link Normal#STANDARD} of no dogs. */
  static Normal of(List<SeenDog> dogs) {
    double mean = 0;
    double variance = 1 - BETWEEN_CLUBS;
    double varianceOfMean = BETWEEN_CLUBS;
    for (int round = 0; round < ROUNDS; round++) {
      double sum = 0;
      double weights = 1 / BETWEEN_CLUBS;
      for (SeenDog dog : dogs) {
        double weight = 1 / (variance + dog.error() * dog.error());
        sum += weight * dog.estimate();
        weights += weight;
      }
      mean = sum / weights;
      varianceOfMean = 1 / weights;
      double spread = DOGS_EXPECTED * (1 - BETWEEN_CLUBS);
      for (SeenDog dog : dogs) {
        double own = variance / (variance + dog.error() * dog.error());
        double off = own * (dog.estimate() - mean);
        spread += off * off + variance * (1 - own);
      }
      variance = spread / (DOGS_EXPECTED + dogs.size());
    }
    // Where the mean lies is not known to the point either (Morris 1983, JASA 78:47).
    return new Normal(mean, Math.sqrt(variance + varianceOfMean));
  }

  /**
   * The mean of dogs that differ by so much, and its error, where nothing is expected of clubs.
   *
   * @param deviation of the dogs, 0 for dogs all alike
   */
  static SeenDog mean(List<SeenDog> dogs, double deviation) {
    double sum = 0;
    double weights = 0;
    for (SeenDog dog : dogs) {
      double weight = 1 / (deviation * deviation + dog.error() * dog.error());
      sum += weight * dog.estimate();
      weights += weight;
    }
    return new SeenDog(sum / weights, 1 / Math.sqrt(weights));
  }
}
