package dev.poleward.domain.timing;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether some values are greater than others, by their ranks (Wilcoxon 1945, Biometrics Bulletin
 * 1:80; Mann, Whitney 1947, Annals of Mathematical Statistics 18:50). The chance is exact, with
 * ties too: every way of choosing that many of all the ranks is counted (Streitberg, Röhmel 1986).
 *
 * @param pairs in which one of the first is greater than one of the others; equal ones count half
 * @param chance that as many or more come about where all are alike
 */
public record RankSum(double pairs, double chance) {

  /** Values in all; every way of choosing some of them is counted, so that more take too long. */
  public static final int VALUES_MAX = 100;

  /**
   * Compares values, in any order.
   *
   * @param ones those that may be greater, at least one
   * @param others at least one
   * @throws IllegalArgumentException for none, or for more than {@link #VALUES_MAX}
   */
  public static RankSum of(List<Double> ones, List<Double> others) {
    if (ones.isEmpty() || others.isEmpty() || ones.size() + others.size() > VALUES_MAX) {
      throw new IllegalArgumentException(
          "cannot be compared: " + ones.size() + " values with " + others.size());
    }
    List<Double> all = new ArrayList<>(ones);
    all.addAll(others);
    // Doubled, ranks are whole also where values are equal and share theirs.
    int[] ranks = doubledRanks(all);
    int sum = 0;
    for (int i = 0; i < ones.size(); i++) {
      sum += ranks[i];
    }
    double least = ones.size() * (ones.size() + 1.0) / 2;
    return new RankSum(sum / 2.0 - least, atLeast(sum, ranks, ones.size()));
  }

  /** How much greater the first are: the median of all differences (Hodges, Lehmann 1963). */
  public static double shift(List<Double> ones, List<Double> others) {
    List<Double> differences = new ArrayList<>(ones.size() * others.size());
    for (double one : ones) {
      for (double other : others) {
        differences.add(one - other);
      }
    }
    return MedianAndMad.median(differences);
  }

  private static int[] doubledRanks(List<Double> values) {
    int[] ranks = new int[values.size()];
    for (int i = 0; i < ranks.length; i++) {
      int less = 0;
      int equal = 0;
      for (double other : values) {
        less += other < values.get(i) ? 1 : 0;
        equal += other == values.get(i) ? 1 : 0;
      }
      ranks[i] = 2 * less + equal + 1;
    }
    return ranks;
  }

  /** Of all ways to choose that many ranks, the share with at least that sum. */
  private static double atLeast(int sum, int[] ranks, int chosen) {
    int greatest = 0;
    for (int rank : ranks) {
      greatest += rank;
    }
    double[][] ways = new double[chosen + 1][greatest + 1];
    ways[0][0] = 1;
    int most = 0;
    for (int i = 0; i < ranks.length; i++) {
      most += ranks[i];
      for (int some = Math.min(chosen, i + 1); some > 0; some--) {
        for (int s = most; s >= ranks[i]; s--) {
          ways[some][s] += ways[some - 1][s - ranks[i]];
        }
      }
    }
    double all = 0;
    double as = 0;
    for (int s = 0; s <= greatest; s++) {
      all += ways[chosen][s];
      as += s >= sum ? ways[chosen][s] : 0;
    }
    return as / all;
  }
}
