package dev.poleward.domain.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EwmaTest {

  /** NIST/SEMATECH e-Handbook 6.3.2.4: data, means and limits [T]; further digits [R]. */
  @Test
  void nistsMeansAndLimits() {
    Ewma ewma = new Ewma(.3, 50);
    List<Double> means =
        ewma.over(
            List.of(
                52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3,
                47.8, 51.2, 52.6, 52.4, 53.6, 52.1));

    isNear(
        means, 0.0051, 50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11,
        49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99);
    isNear(means.subList(17, 20), 0.51e-7, 51.2290679, 51.9403475, 51.9882433);
    assertThat(50 + ewma.limit(2.0539, 3)).isCloseTo(52.5884, within(1e-4));
    assertThat(50 - ewma.limit(2.0539, 3)).isCloseTo(47.4115, within(1e-4));
    isNear(
        IntStream.rangeClosed(1, 5).mapToObj(i -> 50 + ewma.limit(2.0539, 3, i)).toList(),
        1e-6,
        51.848510,
        52.256394,
        52.431406,
        52.512716,
        52.551611);
  }

  /** Montgomery, example 9.2: data [T], means and limits [M], first out at 29 [M]; digits [R]. */
  @Test
  void montgomerysMeansAndWhereTheyLeaveTheLimits() {
    Ewma ewma = new Ewma(.1, 10);
    List<Double> means =
        ewma.over(
            List.of(
                9.45, 7.99, 9.29, 11.66, 12.16, 10.18, 8.04, 11.46, 9.20, 10.34, 9.03, 11.47, 10.51,
                9.40, 10.08, 9.37, 10.62, 10.31, 8.52, 10.84, 10.90, 9.33, 12.29, 11.50, 10.60,
                11.08, 10.38, 11.62, 11.31, 10.52));

    isNear(
        means, 1e-6, 9.945, 9.7495, 9.70355, 9.899195, 10.125276, 10.130748, 9.921673, 10.075506,
        9.987955, 10.023160, 9.923844, 10.078459, 10.121613, 10.049452, 10.052507, 9.984256,
        10.047831, 10.074047, 9.918643, 10.010779, 10.099701, 10.022731, 10.249458, 10.374512,
        10.397061, 10.465354, 10.456819, 10.573137, 10.646824, 10.634141);
    assertThat(10 + ewma.limit(1, 2.7)).isCloseTo(10.619423, within(1e-6));
    assertThat(
            IntStream.rangeClosed(1, 30)
                .filter(i -> Math.abs(means.get(i - 1) - 10) > ewma.limit(1, 2.7, i))
                .findFirst())
        .hasValue(29);
  }

  /** Clean and missed reps [R]. */
  @Test
  void theMeanOfCleanReps() {
    isNear(
        new Ewma(.2, .8).over(List.of(1., 1., 0., 1., 1., 1., 0., 0., 1., 1.)),
        0.51e-9,
        .84,
        .872,
        .6976,
        .75808,
        .806464,
        .8451712,
        .67613696,
        .540909568,
        .6327276544,
        .70618212352);
  }

  @Test
  void ofNoValuesThereIsNoMeanAndAWeightOfOneForgetsAll() {
    assertThat(new Ewma(.3, 50).over(List.of())).isEmpty();
    assertThat(new Ewma(1, 50).over(List.of(3., 4.))).containsExactly(3., 4.);
    assertThatThrownBy(() -> new Ewma(0, 50)).isInstanceOf(IllegalArgumentException.class);
  }

  private static void isNear(List<Double> means, double digit, double... expected) {
    assertThat(means).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      assertThat(means.get(i))
          .as("%d of %s", i, Arrays.toString(expected))
          .isCloseTo(expected[i], within(digit));
    }
  }
}
