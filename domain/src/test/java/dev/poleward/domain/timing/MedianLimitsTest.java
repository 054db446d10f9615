package dev.poleward.domain.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.mastery.Confidence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MedianLimitsTest {

  private static List<Double> upTo(int n) {
    return IntStream.rangeClosed(1, n).mapToObj(i -> (double) i).toList();
  }

  /**
   * Nair 1940, as printed by Dixon and Massey 1969 [T]: n, which value from either end, and how
   * often such limits hold the median, in per cent. What the copy prints for n = 7 is a misprint (1
   * - 2/128 is 98.4%) and left out.
   */
  @ParameterizedTest
  @CsvSource({
    "6, 1, 96.9", "8, 1, 99.2", "9, 2, 96.1", "10, 2, 97.9", "11, 2, 98.8", "12, 3, 96.1",
    "15, 4, 96.5", "17, 5, 95.1", "20, 6, 95.9", "25, 8, 95.7", "30, 10, 95.7", "40, 14, 96.2",
    "50, 18, 96.7", "65, 25, 95.4"
  })
  void nairsLimitsOf95PerCent(int n, int from, double percent) {
    MedianLimits limits = MedianLimits.of(upTo(n), Confidence.OF_95_PERCENT).orElseThrow();

    assertThat(limits.lower()).isEqualTo(from);
    assertThat(limits.upper()).isEqualTo(n + 1 - from);
    assertThat(100 * limits.level()).isCloseTo(percent, within(0.051));
  }

  /** The same table's limits of 99% [T]. */
  @ParameterizedTest
  @CsvSource({
    "8, 1, 99.2",
    "12, 2, 99.4",
    "15, 3, 99.3",
    "20, 4, 99.7",
    "25, 6, 99.6",
    "40, 12, 99.4",
    "65, 22, 99.4"
  })
  void nairsLimitsOf99PerCent(int n, int from, double percent) {
    MedianLimits limits = MedianLimits.of(upTo(n), Confidence.of(0.99)).orElseThrow();

    assertThat(limits.lower()).isEqualTo(from);
    assertThat(100 * limits.level()).isCloseTo(percent, within(0.051));
  }

  /** Five values hold their median in 30 of 32 [D]: not sure enough. */
  @Test
  void tooFewValuesHaveNoLimits() {
    for (int n = 0; n <= 5; n++) {
      assertThat(MedianLimits.of(upTo(n), Confidence.OF_95_PERCENT)).isEmpty();
    }
  }

  @Test
  void theOrderOfTheValuesDoesNotShow() {
    List<Double> values = new ArrayList<>(upTo(23));
    Collections.shuffle(values, new Random(1));

    assertThat(MedianLimits.of(values, Confidence.OF_95_PERCENT))
        .isEqualTo(MedianLimits.of(upTo(23), Confidence.OF_95_PERCENT));
  }

  /** Simulated, seed 5: a skew distribution's median lies inside as often as the limits say. */
  @Test
  void theLimitsHoldTheTruthAboutAsOftenAsTheySay() {
    SplittableRandom random = new SplittableRandom(5);
    int rows = 4_000;
    int held = 0;
    double said = 0;
    for (int row = 0; row < rows; row++) {
      List<Double> values = random.doubles(12).map(u -> -Math.log(u)).boxed().toList();
      MedianLimits limits = MedianLimits.of(values, Confidence.OF_95_PERCENT).orElseThrow();
      held += limits.lower() <= Math.log(2) && Math.log(2) <= limits.upper() ? 1 : 0;
      said = limits.level();
    }

    assertThat((double) held / rows).isCloseTo(said, within(0.01));
  }
}
