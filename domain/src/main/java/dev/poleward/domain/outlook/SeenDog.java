package dev.poleward.domain.outlook;

import org.jspecify.annotations.Nullable;

/**
 * What a dog's own record says of a number, whatever is expected of dogs.
 *
 * @param estimate the likeliest
 * @param error its standard error, above 0
 */
record SeenDog(double estimate, double error) {

  /** Part of the information below which a record is said to hold none. */
  private static final double INFORMATION_MIN = 0.01;

  /** What a record says by itself, where it moved an expectation to an opinion; null if nothing. */
  static @Nullable SeenDog between(Normal expected, Normal afterwards) {
    double before = 1 / expected.variance();
    double own = 1 / afterwards.variance() - before;
    if (own < INFORMATION_MIN * before) {
      return null;
    }
    double mean = (afterwards.mean() / afterwards.variance() - expected.mean() * before) / own;
    return new SeenDog(mean, 1 / Math.sqrt(own));
  }
}
