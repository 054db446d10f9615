package dev.poleward.domain.timing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Whether values rise or fall in time (Mann 1945, Econometrica 13:245; Kendall 1975, Rank
 * Correlation Methods).
 *
 * @param score pairs that rise less pairs that fall; pairs at the same time or of the same value
 *     are neither
 * @param deviation its standard deviation were there no trend
 * @param chanceOneSided of a score as far from 0 in its direction, were there no trend
 */
public record MannKendall(int score, double deviation, double chanceOneSided) {

  /** Without ties the chance is exact up to so many values. */
  private static final int EXACT_MAX = 50;

  /** Of values in any order; at most {@link TheilSen#VALUES_MAX}. */
  static MannKendall of(List<Timed> values) {
    int score = 0;
    for (int i = 0; i < values.size(); i++) {
      for (int j = 0; j < i; j++) {
        score +=
            (int)
                (Math.signum(values.get(i).at() - values.get(j).at())
                    * Math.signum(values.get(i).value() - values.get(j).value()));
      }
    }
    Ties times = Ties.of(values.stream().map(Timed::at).toList());
    Ties heights = Ties.of(values.stream().map(Timed::value).toList());
    double deviation = Math.sqrt(variance(values.size(), times, heights));
    boolean exact = values.size() <= EXACT_MAX && !times.any() && !heights.any();
    return new MannKendall(
        score,
        deviation,
        exact ? exactly(Math.abs(score), values.size()) : nearly(Math.abs(score), deviation));
  }

  /** How many deviations the score is from 0, less the half step between scores. */
  public double z() {
    return deviation == 0 ? 0 : Math.signum(score) * Math.max(0, Math.abs(score) - 1) / deviation;
  }

  /** The chance of a score as far from 0 in either direction, at most 1. */
  public double chanceTwoSided() {
    return Math.min(1, 2 * chanceOneSided);
  }

  /** Kendall 1975, with ties in either. */
  private static double variance(int n, Ties times, Ties heights) {
    double pairs = n * (n - 1.0);
    double variance = (pairs * (2 * n + 5) - times.ofVariance() - heights.ofVariance()) / 18;
    if (n > 1) {
      variance += times.pairs() * heights.pairs() / (2 * pairs);
    }
    if (n > 2) {
      variance += times.triples() * heights.triples() / (9 * pairs * (n - 2));
    }
    return Math.max(0, variance);
  }

  private static double nearly(int score, double deviation) {
    return score == 0 || deviation == 0
        ? 0.5
        : NormalDistribution.of(0, 1).survivalProbability((score - 1) / deviation);
  }

  /** Of all orders of n values, the share with at least that score. */
  private static double exactly(int score, int n) {
    // Shares by how many pairs fall; a value more falls below 0 to all of those before it.
    double[] shares = {1};
    for (int values = 2; values <= n; values++) {
      double[] next = new double[shares.length + values - 1];
      for (int falling = 0; falling < shares.length; falling++) {
        for (int more = 0; more < values; more++) {
          next[falling + more] += shares[falling] / values;
        }
      }
      shares = next;
    }
    double share = 0;
    for (int falling = 0; 2 * falling <= n * (n - 1) / 2 - score; falling++) {
      share += shares[falling];
    }
    return share;
  }

  /** Sums over groups of equal values, t to a group. */
  private record Ties(boolean any, double ofVariance, double pairs, double triples) {

    static Ties of(List<Double> values) {
      Map<Double, Integer> sizes = new HashMap<>();
      // −0 and 0 are the same time.
      values.forEach(value -> sizes.merge(value + 0.0, 1, Integer::sum));
      double ofVariance = 0;
      double pairs = 0;
      double triples = 0;
      for (double t : sizes.values()) {
        ofVariance += t * (t - 1) * (2 * t + 5);
        pairs += t * (t - 1);
        triples += t * (t - 1) * (t - 2);
      }
      return new Ties(sizes.size() < values.size(), ofVariance, pairs, triples);
    }
  }
}
