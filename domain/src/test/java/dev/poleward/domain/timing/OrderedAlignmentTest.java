package dev.poleward.domain.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OrderedAlignmentTest {

  /**
   * GCATGCG and GATTACA with 1 for a match, −1 for a mismatch and −1 for a gap score 0 at best: the
   * usual worked example of Needleman and Wunsch's method [M]. A letter costs 1 less half its
   * score, so that 14 letters cost 14 less the score.
   */
  @Test
  void theUsualExampleOfTwoSequences() {
    String one = "GCATGCG";
    String other = "GATTACA";
    OrderedAlignment alignment =
        OrderedAlignment.of(7, 7, (i, j) -> 2 - (one.charAt(i) == other.charAt(j) ? 1 : -1), 1 + 1);

    assertThat(14 - alignment.cost()).isEqualTo(0);
  }

  /** Every pairing that does not cross is tried. */
  @Test
  void nothingCostsLess() {
    SplittableRandom random = new SplittableRandom(21);
    for (int round = 0; round < 300; round++) {
      int ones = random.nextInt(6);
      int others = random.nextInt(6);
      double[][] costs = new double[6][6];
      for (double[] row : costs) {
        for (int j = 0; j < row.length; j++) {
          row[j] = random.nextInt(5) == 0 ? Double.POSITIVE_INFINITY : random.nextInt(9);
        }
      }
      OrderedAlignment found = OrderedAlignment.of(ones, others, (i, j) -> costs[i][j], 2.5);

      assertThat(found.cost()).isCloseTo(least(costs, ones, others), within(1e-12));
      assertThat(costOf(found, costs, ones, others)).isCloseTo(found.cost(), within(1e-12));
    }
  }

  private static double least(double[][] costs, int ones, int others) {
    if (ones == 0 || others == 0) {
      return 2.5 * (ones + others);
    }
    return Math.min(
        costs[ones - 1][others - 1] + least(costs, ones - 1, others - 1),
        2.5 + Math.min(least(costs, ones - 1, others), least(costs, ones, others - 1)));
  }

  /** What the pairs cost that were found; they do not cross. */
  private static double costOf(OrderedAlignment found, double[][] costs, int ones, int others) {
    double cost = 2.5 * (ones + others);
    int last = -1;
    for (int i = 0; i < ones; i++) {
      if (found.partner(i).isPresent()) {
        int partner = found.partner(i).getAsInt();
        assertThat(partner).isGreaterThan(last);
        last = partner;
        cost += costs[i][partner] - 5;
      }
    }
    return cost;
  }

  @Test
  void whatIsTooFarApartIsLeftAlone() {
    double[] ones = {0, 10, 20};
    double[] others = {1, 19};
    OrderedAlignment alignment =
        OrderedAlignment.of(3, 2, (i, j) -> Math.abs(ones[i] - others[j]), 2);

    assertThat(alignment.partners()).containsExactly(0, -1, 1);
    assertThat(alignment.cost()).isEqualTo(4);
  }
}
