package dev.poleward.domain.timing;

import java.util.ArrayList;
import java.util.List;

/**
 * A running mean that forgets: each value moves it by a share of the way (Roberts 1959,
 * Technometrics 1:239).
 *
 * @param weight of the newest value, above 0, at most 1
 * @param start where it begins: the mean that is expected
 */
public record Ewma(double weight, double start) {

  /** Refuses what is no weight. */
  public Ewma {
    if (!(weight > 0 && weight <= 1)) {
      throw new IllegalArgumentException("no weight: " + weight);
    }
  }

  /** The mean after each value, in their order. */
  public List<Double> over(List<Double> values) {
    List<Double> means = new ArrayList<>(values.size());
    double mean = start;
    for (double value : values) {
      mean += weight * (value - mean);
      means.add(mean);
    }
    return List.copyOf(means);
  }

  /**
   * How far from the start the mean may lie after so many values, were nothing changed.
   *
   * @param deviation standard deviation of a value
   * @param width of the limits, in deviations of the mean: 3 as a rule
   * @param values how many there were, from 1
   */
  public double limit(double deviation, double width, int values) {
    return limit(deviation, width) * Math.sqrt(1 - StrictMath.pow(1 - weight, 2.0 * values));
  }

  /** Likewise after very many. */
  public double limit(double deviation, double width) {
    return width * deviation * Math.sqrt(weight / (2 - weight));
  }
}
