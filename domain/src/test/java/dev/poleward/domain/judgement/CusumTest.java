package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CusumTest {

  /** NIST/SEMATECH e-Handbook 6.3.2.3: data [M], parameters and the signal at 14 [T]. */
  private static final double[] NIST = {
    324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600,
    324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350
  };

  /** Montgomery, Introduction to Statistical Quality Control, Table 9.2 [T]. */
  private static final double[] MONTGOMERY = {
    9.45, 7.99, 9.29, 11.66, 12.16, 10.18, 8.04, 11.46, 9.20, 10.34, 9.03, 11.47, 10.51, 9.40,
    10.08, 9.37, 10.62, 10.31, 8.52, 10.84, 10.90, 9.33, 12.29, 11.50, 10.60, 11.08, 10.38, 11.62,
    11.31, 10.52
  };

  /** Printed from 13 on [M]; all [R]. */
  @Test
  void nistsSumsAndTheirSignal() {
    Cusum cusum = new Cusum(.3175, 4.1959);

    assertThat(sums(cusum, rising(NIST, 325)))
        .usingElementComparator(CusumTest::toFourDigits)
        .containsExactly(
            0., 0., 0., 0., .0325, 0., 0., 0., 0., 0., 0., 0., 3.0075, 4.94, 7.4475, 10.63, 11.9875,
            14.445, 16.0025, 19.035);
    assertThat(firstSound(cusum, rising(NIST, 325))).isEqualTo(14);
    assertThat(sums(cusum, falling(NIST, 325)).subList(0, 12))
        .usingElementComparator(CusumTest::toFourDigits)
        .containsExactly(0., .0075, 0., .3325, 0., 0., .5575, .715, .1725, .255, .3125, 0.);
  }

  /** The table's sums, its signal at 29 and the change dated to 23 [T]; the falling ones [R]. */
  @Test
  void montgomerysSumsTheirSignalAndWhenItChanged() {
    Cusum cusum = new Cusum(.5, 5);

    assertThat(sums(cusum, rising(MONTGOMERY, 10)))
        .usingElementComparator(CusumTest::toFourDigits)
        .containsExactly(
            0., 0., 0., 1.16, 2.82, 2.50, .04, 1.00, 0., 0., 0., .97, .98, 0., 0., 0., .12, 0., 0.,
            .34, .74, 0., 1.79, 2.79, 2.89, 3.47, 3.35, 4.47, 5.28, 5.30);
    assertThat(firstSound(cusum, rising(MONTGOMERY, 10))).isEqualTo(29);
    assertThat(after(cusum, rising(MONTGOMERY, 10)).lastZero() + 1).isEqualTo(23);
    assertThat(sums(cusum, falling(MONTGOMERY, 10)).subList(0, 11))
        .usingElementComparator(CusumTest::toFourDigits)
        .containsExactly(.05, 1.56, 1.77, 0., 0., 0., 1.46, 0., .30, 0., .47);
  }

  /** Weights of log likelihood, 0.85 against 0.70 clean, misses at those trials [R]. */
  @Test
  void sumsOfLogLikelihoodRatios() {
    double ofMiss = Math.log(.30 / .15);
    double ofClean = Math.log(.70 / .85);
    List<Integer> misses = List.of(3, 8, 10, 11, 13, 15, 16, 18);
    double[] values = new double[18];
    for (int trial = 1; trial <= 18; trial++) {
      values[trial - 1] = misses.contains(trial) ? ofMiss : ofClean;
    }
    Cusum cusum = new Cusum(0, 2);

    assertThat(sums(cusum, values))
        .usingElementComparator(CusumTest::toFourDigits)
        .containsExactly(
            0., 0., .693147, .498991, .304835, .110679, 0., .693147, .498991, 1.192138, 1.885286,
            1.691130, 2.384277, 2.190121, 2.883268, 3.576415, 3.382259, 4.075406);
    assertThat(firstSound(cusum, values)).isEqualTo(13);
  }

  /**
   * Montgomery's run lengths of a CUSUM that watches both ways, K = 0.5: 465 and 10.4 at H = 5, 168
   * and 8.38 at H = 4, with nothing changed and with a mean that moved by one deviation [T], [M];
   * more digits [R]. Simulated, seed 5; limits are three times the error of the mean.
   */
  @ParameterizedTest
  @CsvSource({"5, 0, 465.4435", "5, 1, 10.37597", "4, 0, 167.6838", "4, 1, 8.383132"})
  void valuesUntilTheSignalAreAsManyAsPublished(double threshold, double moved, double values) {
    SplittableRandom random = new SplittableRandom(5);
    Cusum cusum = new Cusum(.5, threshold);
    int runs = moved == 0 ? 4_000 : 20_000;
    double sum = 0;
    double squares = 0;
    for (int run = 0; run < runs; run++) {
      CusumScore up = cusum.begun();
      CusumScore down = cusum.begun();
      while (!up.sounds() && !down.sounds()) {
        double value = moved + random.nextGaussian();
        up = up.with(value);
        down = down.with(-value);
      }
      sum += up.values();
      squares += (double) up.values() * up.values();
    }
    double mean = sum / runs;
    double error = Math.sqrt((squares / runs - mean * mean) / runs);

    assertThat(mean).isCloseTo(values, within(3 * error));
    assertThat(error).isLessThan(values / 50);
  }

  private static int toFourDigits(double one, double other) {
    return Math.abs(one - other) < 1e-5 ? 0 : Double.compare(one, other);
  }

  private static double[] rising(double[] values, double centre) {
    return Arrays.stream(values).map(value -> value - centre).toArray();
  }

  private static double[] falling(double[] values, double centre) {
    return Arrays.stream(values).map(value -> centre - value).toArray();
  }

  private static List<Double> sums(Cusum cusum, double[] values) {
    List<Double> sums = new ArrayList<>();
    CusumScore score = cusum.begun();
    for (double value : values) {
      score = score.with(value);
      sums.add(score.sum());
    }
    return sums;
  }

  private static CusumScore after(Cusum cusum, double[] values) {
    CusumScore score = cusum.begun();
    for (double value : values) {
      score = score.with(value);
    }
    return score;
  }

  private static int firstSound(Cusum cusum, double[] values) {
    CusumScore score = cusum.begun();
    while (!score.sounds()) {
      score = score.with(values[score.values()]);
    }
    assertThat(score.values()).isPositive();
    return score.values();
  }

  @Test
  void anEmptyRowSoundsNever() {
    assertThat(new Cusum(1, 1).begun().sounds()).isFalse();
    assertThat(new Cusum(1, 1).begun().sum()).isCloseTo(0, within(0.0));
  }
}
