package dev.poleward.domain.timing;

import dev.poleward.domain.mastery.Confidence;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Limits of a median that hold whatever the distribution is: two of the values themselves, found by
 * the sign test (Thompson 1936, Annals of Mathematical Statistics 7:122; Nair 1940, Sankhyā 4:551).
 *
 * @param lower in the unit of the values
 * @param upper likewise
 * @param level how often such limits hold the median: at least what was asked for
 */
public record MedianLimits(double lower, double upper, double level) {

  /** Of finite values, in any order; empty where they are too few for limits that sure. */
  public static Optional<MedianLimits> of(List<Double> values, Confidence confidence) {
    int n = values.size();
    BinomialDistribution below = BinomialDistribution.of(n, 0.5);
    double tail = (1 - confidence.level()) / 2;
    int outside = 0;
    while (2 * outside < n && below.cumulativeProbability(outside) <= tail) {
      outside++;
    }
    if (outside == 0) {
      return Optional.empty();
    }
    double[] sorted = values.stream().mapToDouble(value -> value).sorted().toArray();
    return Optional.of(
        new MedianLimits(
            sorted[outside - 1],
            sorted[n - outside],
            1 - 2 * below.cumulativeProbability(outside - 1)));
  }
}
