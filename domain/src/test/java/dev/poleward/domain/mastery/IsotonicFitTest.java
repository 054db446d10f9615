package dev.poleward.domain.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class IsotonicFitTest {

  /**
   * R's examples of isoreg: the data are its help page's [S], the fits come from running it [R].
   */
  @Test
  void theExamplesOfRsIsoreg() {
    double half = 0.5;
    assertIncreasing(
        new double[] {1, 0, 4, 3, 3, 5, 4, 2, 0}, new double[] {half, half, 3, 3, 3, 3, 3, 3, 3});
    double third = 10.0 / 3;
    assertIncreasing(
        new double[] {1, 0, 4, 3, 3, 5, 4, 2, 3},
        new double[] {half, half, third, third, third, 3.5, 3.5, 3.5, 3.5});
    assertIncreasing(
        new double[] {5, 9, 1, 2, 5, 6, 7, 8, 3, 8},
        new double[] {4.25, 4.25, 4.25, 4.25, 5, 6, 6, 6, 6, 8});
  }

  /** Robertson, Wright and Dykstra 1988, example 1.1.1: the pituitary fissure by age [T]. */
  @Test
  void thePituitaryData() {
    double[] fit =
        IsotonicFit.increasing(
            new double[] {22.5, 70 / 3.0, 62.5 / 3, 24.25}, new double[] {3, 3, 3, 2});

    assertThat(fit)
        .containsExactly(new double[] {200 / 9.0, 200 / 9.0, 200 / 9.0, 24.25}, within(1e-12));
  }

  /** fdrtool's example, by its monoreg [R]. */
  @Test
  void fdrtoolsExample() {
    assertIncreasing(
        new double[] {1, 0, 1, 0, 0, 1, 0, 1, 1, 0, 1, 0},
        new double[] {.4, .4, .4, .4, .4, .5, .5, .6, .6, .6, .6, .6});
  }

  /** R's Iso::pava [R]. */
  @Test
  void weightsCount() {
    double[] fit =
        IsotonicFit.increasing(
            new double[] {.2, .5, .4, .9, .6, .7, 1}, new double[] {10, 8, 20, 5, 15, 10, 4});

    assertThat(fit)
        .containsExactly(new double[] {.2, 12 / 28.0, 12 / 28.0, .675, .675, .7, 1}, within(1e-12));
  }

  /** R [R]. */
  @Test
  void theChanceFallsWithTheAngle() {
    double[] made = {.9, 1, .7, .8, .4, .5, .1};
    double[] fit = IsotonicFit.decreasing(made, equalWeights(made.length));

    assertThat(fit).containsExactly(new double[] {.95, .95, .75, .75, .45, .45, .1}, within(1e-12));
  }

  @Test
  void ofNothingAndOfOne() {
    assertThat(IsotonicFit.increasing(new double[0], new double[0])).isEmpty();
    assertThat(IsotonicFit.decreasing(new double[] {.3}, new double[] {1e-100}))
        .containsExactly(.3);
  }

  /** Monotone; of the same mean; what is monotone already stays; and no other level fits better. */
  @Test
  void itIsTheNearestMonotoneSequence() {
    Random random = new Random(11);
    for (int round = 0; round < 2_000; round++) {
      int size = 1 + random.nextInt(15);
      double[] values = random.doubles(size).toArray();
      double[] weights = random.doubles(size, 1e-3, 50).toArray();

      double[] fit = IsotonicFit.increasing(values, weights);

      assertThat(fit).isSorted();
      assertThat(sum(fit, weights)).isCloseTo(sum(values, weights), within(1e-9));
      assertThat(IsotonicFit.increasing(fit, weights)).isEqualTo(fit);
      double[] other = random.doubles(size).sorted().toArray();
      assertThat(distance(values, fit, weights))
          .isLessThanOrEqualTo(distance(values, other, weights));
      double[] near = fit.clone();
      int from = random.nextInt(size);
      for (int i = from; i < size; i++) {
        near[i] += 0.01;
      }
      assertThat(distance(values, fit, weights))
          .isLessThanOrEqualTo(distance(values, near, weights));
    }
  }

  private static double sum(double[] values, double[] weights) {
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += weights[i] * values[i];
    }
    return sum;
  }

  private static double distance(double[] values, double[] fit, double[] weights) {
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += weights[i] * (values[i] - fit[i]) * (values[i] - fit[i]);
    }
    return sum;
  }

  private static void assertIncreasing(double[] values, double[] fit) {
    assertThat(IsotonicFit.increasing(values, equalWeights(values.length)))
        .containsExactly(fit, within(1e-12));
  }

  private static double[] equalWeights(int size) {
    double[] weights = new double[size];
    Arrays.fill(weights, 10);
    return weights;
  }
}
