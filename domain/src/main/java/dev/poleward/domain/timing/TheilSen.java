package dev.poleward.domain.timing;

import dev.poleward.domain.mastery.Confidence;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * A trend that a few odd values do not turn: the median of the slopes between all pairs (Theil
 * 1950; Sen 1968, JASA 63:1379).
 *
 * @param slope value for each unit of time
 * @param lower limit of the slope; null where there are too few values for one
 * @param upper likewise
 * @param intercept median of what is left of the values without the slope
 * @param trend whether there is one
 */
public record TheilSen(
    double slope,
    @Nullable Double lower,
    @Nullable Double upper,
    double intercept,
    MannKendall trend) {

  /** Values; who has more takes the last ones. */
  public static final int VALUES_MAX = 1_000;

  /**
   * The trend of values in any order; empty unless two of them lie at different times.
   *
   * @throws IllegalArgumentException for more than {@link #VALUES_MAX}
   */
  public static Optional<TheilSen> of(List<Timed> values, Confidence confidence) {
    if (values.size() > VALUES_MAX) {
      throw new IllegalArgumentException("too many values: " + values.size());
    }
    double[] slopes = slopes(values);
    if (slopes.length == 0) {
      return Optional.empty();
    }
    double slope = MedianAndMad.medianOfSorted(slopes);
    MannKendall trend = MannKendall.of(values);
    // Sen: so many of the smallest and of the greatest slopes lie outside the limits.
    int outside = (int) Math.floor((slopes.length - confidence.z() * trend.deviation()) / 2);
    return Optional.of(
        new TheilSen(
            slope,
            outside < 1 ? null : slopes[outside - 1],
            outside < 1 ? null : slopes[slopes.length - outside],
            MedianAndMad.median(
                values.stream().map(each -> each.value() - slope * each.at()).toList()),
            trend));
  }

  private static double[] slopes(List<Timed> values) {
    DoubleStream.Builder slopes = DoubleStream.builder();
    for (int i = 0; i < values.size(); i++) {
      for (int j = 0; j < i; j++) {
        double apart = values.get(i).at() - values.get(j).at();
        if (apart != 0) {
          slopes.add((values.get(i).value() - values.get(j).value()) / apart);
        }
      }
    }
    return slopes.build().sorted().toArray();
  }
}
