package dev.poleward.domain.mastery;

import java.util.Arrays;

/**
 * Isotonic regression by pooling adjacent violators (Ayer et al. 1955; Barlow et al. 1972): of all
 * sequences that go one way, the one nearest to the values in weighted squares, which for shares is
 * the likeliest one too.
 */
public final class IsotonicFit {

  private IsotonicFit() {}

  /**
   * The nearest sequence that never goes down.
   *
   * @param values as many as there are weights
   * @param weights each above 0
   */
  public static double[] increasing(double[] values, double[] weights) {
    double[] levels = new double[values.length];
    double[] heft = new double[values.length];
    int[] ends = new int[values.length];
    int pools = 0;
    for (int i = 0; i < values.length; i++) {
      levels[pools] = values[i];
      heft[pools] = weights[i];
      ends[pools] = i + 1;
      pools++;
      while (pools > 1 && levels[pools - 2] >= levels[pools - 1]) {
        double both = heft[pools - 2] + heft[pools - 1];
        levels[pools - 2] += (levels[pools - 1] - levels[pools - 2]) * (heft[pools - 1] / both);
        heft[pools - 2] = both;
        ends[pools - 2] = ends[pools - 1];
        pools--;
      }
    }
    double[] fit = new double[values.length];
    int from = 0;
    for (int pool = 0; pool < pools; pool++) {
      Arrays.fill(fit, from, ends[pool], levels[pool]);
      from = ends[pool];
    }
    return fit;
  }

  /**
   * The nearest sequence that never goes up.
   *
   * @param values as many as there are weights
   * @param weights each above 0
   */
  public static double[] decreasing(double[] values, double[] weights) {
    double[] fit = increasing(negated(values), weights);
    return negated(fit);
  }

  private static double[] negated(double[] values) {
    double[] negated = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      negated[i] = 0.0 - values[i];
    }
    return negated;
  }
}
