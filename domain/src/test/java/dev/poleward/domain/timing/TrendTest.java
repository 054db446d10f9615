package dev.poleward.domain.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.mastery.Confidence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class TrendTest {

  /** Sen 1968: data, slope, 93% limits as in R's deming [T]; his own printed limits are wrong. */
  private static final List<Timed> SEN =
      List.of(
          new Timed(1, 9),
          new Timed(2, 15),
          new Timed(3, 19),
          new Timed(4, 20),
          new Timed(10, 45),
          new Timed(12, 55),
          new Timed(18, 78));

  @Test
  void sensSlopeAndItsLimits() {
    TheilSen trend = TheilSen.of(SEN, Confidence.of(0.93)).orElseThrow();

    assertThat(trend.slope()).isEqualTo(4);
    assertThat(trend.lower()).isCloseTo(26.0 / 7, within(1e-12));
    assertThat(trend.upper()).isCloseTo(35.0 / 8, within(1e-12));
    // One of two conventions: the median of the rests, not the rest of the medians, which is 4.
    assertThat(trend.intercept()).isEqualTo(6);
  }

  /** S 21, variance 44.33, z 3.003757 [R]; all rise: 1 order of 5,040 [D]. */
  @Test
  void sensTrend() {
    MannKendall trend = MannKendall.of(SEN);

    assertThat(trend.score()).isEqualTo(21);
    assertThat(trend.deviation() * trend.deviation()).isCloseTo(44.33333, within(0.51e-5));
    assertThat(trend.z()).isCloseTo(3.003757, within(0.51e-6));
    assertThat(trend.chanceOneSided()).isCloseTo(1 / 5040.0, within(1e-15));
  }

  /** Hollander and Wolfe, example 9.1: data [T], C −6 and .117 [M], the rest [R]. */
  @Test
  void hollandersAndWolfesCloudSeeding() {
    TheilSen trend =
        TheilSen.of(evenly(1.26, 1.27, 1.12, 1.16, 1.03), Confidence.OF_95_PERCENT).orElseThrow();

    assertThat(trend.trend().score()).isEqualTo(-6);
    assertThat(trend.trend().chanceOneSided()).isCloseTo(14 / 120.0, within(1e-12));
    assertThat(trend.trend().z()).isCloseTo(-1.224745, within(0.51e-6));
    assertThat(trend.slope()).isCloseTo(-.05625, within(1e-12));
    assertThat(trend.intercept()).isCloseTo(1.31625, within(1e-12));
  }

  /** EPA QA/G-9: S 6, P .117 [M], slope 1.125 [R]. */
  @Test
  void theTrendOfTheEpasGuidance() {
    TheilSen trend = TheilSen.of(evenly(5, 6, 11, 8, 10), Confidence.OF_95_PERCENT).orElseThrow();

    assertThat(trend.trend().score()).isEqualTo(6);
    assertThat(trend.trend().chanceOneSided()).isCloseTo(.117, within(0.0005));
    assertThat(trend.slope()).isCloseTo(1.125, within(1e-12));
  }

  /** Gilbert 1987, chapter 16: S 4 [M], exact chance and slope [R]. */
  @Test
  void gilbertsTrend() {
    TheilSen trend = TheilSen.of(evenly(10, 15, 14, 20), Confidence.OF_95_PERCENT).orElseThrow();

    assertThat(trend.trend().score()).isEqualTo(4);
    assertThat(trend.trend().chanceOneSided()).isCloseTo(.166667, within(0.51e-6));
    assertThat(trend.slope()).isCloseTo(2.916667, within(0.51e-6));
  }

  /** [R]. */
  @Test
  void tiesMakeTheVarianceLess() {
    TheilSen trend =
        TheilSen.of(evenly(3, 5, 5, 7, 6, 9, 9, 9, 12, 11), Confidence.OF_95_PERCENT).orElseThrow();

    assertThat(trend.trend().score()).isEqualTo(37);
    assertThat(trend.trend().deviation() * trend.trend().deviation())
        .isCloseTo(120.3333, within(0.51e-4));
    assertThat(trend.trend().z()).isCloseTo(3.281780, within(0.51e-6));
    assertThat(trend.trend().chanceTwoSided()).isCloseTo(.00103154, within(0.51e-8));
    assertThat(trend.slope()).isEqualTo(1);
  }

  @Test
  void withoutTwoTimesThereIsNoTrend() {
    assertThat(TheilSen.of(List.of(), Confidence.OF_95_PERCENT)).isEmpty();
    assertThat(TheilSen.of(List.of(new Timed(1, 2)), Confidence.OF_95_PERCENT)).isEmpty();
    assertThat(TheilSen.of(List.of(new Timed(1, 2), new Timed(1, 3)), Confidence.OF_95_PERCENT))
        .isEmpty();
  }

  @Test
  void ofTwoValuesThereIsASlopeWithoutLimits() {
    TheilSen trend = TheilSen.of(evenly(4, 2), Confidence.OF_95_PERCENT).orElseThrow();

    assertThat(trend.slope()).isEqualTo(-2);
    assertThat(trend.lower()).isNull();
    assertThat(trend.upper()).isNull();
    assertThat(trend.trend().chanceTwoSided()).isEqualTo(1);
  }

  @Test
  void valuesThatNeverChangeHaveNoTrend() {
    TheilSen trend = TheilSen.of(evenly(3, 3, 3, 3, 3, 3), Confidence.OF_95_PERCENT).orElseThrow();

    assertThat(trend.slope()).isZero();
    assertThat(trend.lower()).isZero();
    assertThat(trend.upper()).isZero();
    assertThat(trend.trend().z()).isZero();
    assertThat(trend.trend().chanceTwoSided()).isEqualTo(1);
  }

  @Test
  void theOrderOfTheValuesDoesNotShow() {
    List<Timed> values = new ArrayList<>(SEN);
    TheilSen trend = TheilSen.of(values, Confidence.OF_95_PERCENT).orElseThrow();
    for (int seed = 0; seed < 20; seed++) {
      Collections.shuffle(values, new Random(seed));
      assertThat(TheilSen.of(values, Confidence.OF_95_PERCENT)).contains(trend);
    }
  }

  /**
   * Simulated, seed 3: of rows without a trend the limits hold 0 in 95%, some odd values or not.
   */
  @Test
  void theLimitsHoldTheTruthAboutAsOftenAsTheySay() {
    SplittableRandom random = new SplittableRandom(3);
    int rows = 2_000;
    int held = 0;
    for (int row = 0; row < rows; row++) {
      double[] values = new double[15];
      for (int i = 0; i < values.length; i++) {
        values[i] = random.nextGaussian() * (random.nextInt(5) == 0 ? 10 : 1);
      }
      TheilSen trend = TheilSen.of(evenly(values), Confidence.OF_95_PERCENT).orElseThrow();
      held += holdsZero(trend.lower(), trend.upper()) ? 1 : 0;
    }

    assertThat((double) held / rows).isBetween(0.94, 0.97);
  }

  private static boolean holdsZero(@Nullable Double lower, @Nullable Double upper) {
    return lower != null && upper != null && lower <= 0 && upper >= 0;
  }

  @Test
  void tooManyValuesAreRefused() {
    List<Timed> values = Collections.nCopies(TheilSen.VALUES_MAX + 1, new Timed(1, 1));

    assertThatThrownBy(() -> TheilSen.of(values, Confidence.OF_95_PERCENT))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static List<Timed> evenly(double... values) {
    List<Timed> timed = new ArrayList<>();
    for (double value : values) {
      timed.add(new Timed(timed.size() + 1, value));
    }
    return timed;
  }
}
