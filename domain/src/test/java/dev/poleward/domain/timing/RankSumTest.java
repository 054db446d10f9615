package dev.poleward.domain.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RankSumTest {

  private static final List<Double> AT_TERM =
      List.of(0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46);
  private static final List<Double> EARLIER = List.of(1.15, 0.88, 0.90, 0.74, 1.21);

  /**
   * Hollander and Wolfe, example 4.1, as in R's {@code ?wilcox.test}: data [T], W 35 and P .1272
   * [M], further digits and the shift of .305 [M] by another program.
   */
  @Test
  void hollandersAndWolfesPermeabilityOfTheChorioamnion() {
    RankSum compared = RankSum.of(AT_TERM, EARLIER);

    assertThat(compared.pairs()).isEqualTo(35);
    assertThat(compared.chance()).isCloseTo(0.1272061272, within(1e-10));
    assertThat(RankSum.shift(AT_TERM, EARLIER)).isCloseTo(0.305, within(1e-12));
  }

  /** Every way of choosing is one of them, ties or not. */
  @Test
  void theChanceIsTheShareOfAllWaysToChoose() {
    SplittableRandom random = new SplittableRandom(8);
    for (int round = 0; round < 200; round++) {
      List<Double> ones = values(random, 1 + random.nextInt(5));
      List<Double> others = values(random, 1 + random.nextInt(5));
      List<Double> all = new ArrayList<>(ones);
      all.addAll(others);
      double least = pairs(ones, others);
      int as = 0;
      int ways = 0;
      for (int chosen = 0; chosen < 1 << all.size(); chosen++) {
        if (Integer.bitCount(chosen) == ones.size()) {
          List<Double> some = new ArrayList<>();
          List<Double> rest = new ArrayList<>();
          for (int i = 0; i < all.size(); i++) {
            ((chosen >> i & 1) == 1 ? some : rest).add(all.get(i));
          }
          ways++;
          as += pairs(some, rest) >= least ? 1 : 0;
        }
      }

      RankSum compared = RankSum.of(ones, others);
      assertThat(compared.pairs()).isEqualTo(least);
      assertThat(compared.chance()).isCloseTo((double) as / ways, within(1e-12));
    }
  }

  private static List<Double> values(SplittableRandom random, int count) {
    return random.ints(count, 0, 6).mapToObj(i -> (double) i).toList();
  }

  private static double pairs(List<Double> ones, List<Double> others) {
    double pairs = 0;
    for (double one : ones) {
      for (double other : others) {
        pairs += one > other ? 1 : one == other ? 0.5 : 0;
      }
    }
    return pairs;
  }

  /** Three above eight: one way of 165 [D]. */
  @Test
  void theRarestOrderOfFewDays() {
    RankSum compared = RankSum.of(List.of(9., 10., 11.), List.of(1., 2., 3., 4., 5., 6., 7., 8.));

    assertThat(compared.chance()).isCloseTo(1.0 / 165, within(1e-15));
  }

  @Test
  void noneAndTooManyAreRefused() {
    List<Double> many = Collections.nCopies(RankSum.VALUES_MAX, 1.0);

    assertThatThrownBy(() -> RankSum.of(List.of(), EARLIER))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RankSum.of(many, EARLIER))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
