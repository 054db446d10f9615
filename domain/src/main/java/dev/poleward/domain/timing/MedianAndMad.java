package dev.poleward.domain.timing;

import java.util.List;
import java.util.Optional;

/**
 * What is usual and how far from it is usual, whatever a few odd values are.
 *
 * @param median in the unit of the values
 * @param mad median of the distances from the median, in the same unit, as it is
 */
public record MedianAndMad(double median, double mad) {

  /** By so much a normal distribution's standard deviation exceeds its median distance. */
  static final double OF_NORMAL = 1.4826;

  /** Of finite values; empty of none. */
  public static Optional<MedianAndMad> of(List<Double> values) {
    if (values.isEmpty()) {
      return Optional.empty();
    }
    double median = median(values);
    return Optional.of(
        new MedianAndMad(
            median, median(values.stream().map(value -> Math.abs(value - median)).toList())));
  }

  /**
   * The distance scaled so that, of a normal distribution, it is the standard deviation (Rousseeuw,
   * Croux 1993, JASA 88:1273).
   */
  public double deviation() {
    return OF_NORMAL * mad;
  }

  /** The middle value, or half way between the two that are; of at least one. */
  static double median(List<Double> values) {
    double[] sorted = values.stream().mapToDouble(value -> value).sorted().toArray();
    return medianOfSorted(sorted);
  }

  /** Likewise, of ascending values. */
  static double medianOfSorted(double[] sorted) {
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }
}
