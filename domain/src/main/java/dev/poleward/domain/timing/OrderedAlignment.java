package dev.poleward.domain.timing;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * Which of some things belongs to which of others, when both lie in order and no two pairs cross:
 * of all such pairings the one that costs least, found by dynamic programming (Needleman, Wunsch
 * 1970, Journal of Molecular Biology 48:443).
 */
public final class OrderedAlignment {

  private static final int NONE = -1;

  private final int[] partners;
  private final double cost;

  private OrderedAlignment(int[] partners, double cost) {
    this.partners = partners;
    this.cost = cost;
  }

  /** What it costs to pair two things. */
  public interface Cost {
    /** The cost, at least 0; infinite for what must not be paired. */
    double of(int one, int other);
  }

  /**
   * Pairs the first with the others.
   *
   * @param ones how many there are
   * @param others how many there are
   * @param alone what it costs to leave one of either without a partner: two are paired only where
   *     that costs at most twice as much
   */
  public static OrderedAlignment of(int ones, int others, Cost cost, double alone) {
    double[][] least = new double[ones + 1][others + 1];
    for (int i = 0; i <= ones; i++) {
      for (int j = 0; j <= others; j++) {
        least[i][j] =
            i == 0 || j == 0
                ? (i + j) * alone
                : Math.min(
                    least[i - 1][j - 1] + cost.of(i - 1, j - 1),
                    Math.min(least[i - 1][j], least[i][j - 1]) + alone);
      }
    }
    return new OrderedAlignment(traced(least, cost), least[ones][others]);
  }

  /** From the end back; where several ways cost the same, a pair goes before leaving one alone. */
  private static int[] traced(double[][] least, Cost cost) {
    int i = least.length - 1;
    int j = least[0].length - 1;
    int[] partners = new int[i];
    Arrays.fill(partners, NONE);
    while (i > 0 && j > 0) {
      if (least[i][j] == least[i - 1][j - 1] + cost.of(i - 1, j - 1)) {
        i--;
        j--;
        partners[i] = j;
      } else if (least[i - 1][j] <= least[i][j - 1]) {
        i--;
      } else {
        j--;
      }
    }
    return partners;
  }

  /** What it costs in all. */
  public double cost() {
    return cost;
  }

  /** The partner of one of the first; empty where it was left alone. */
  public OptionalInt partner(int one) {
    return partners[one] == NONE ? OptionalInt.empty() : OptionalInt.of(partners[one]);
  }

  /** The partners of the first, in order; -1 where one was left alone. */
  public List<Integer> partners() {
    return Arrays.stream(partners).boxed().toList();
  }
}
