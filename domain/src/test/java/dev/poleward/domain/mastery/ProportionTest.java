package dev.poleward.domain.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {

  private static final Confidence CONFIDENCE = Confidence.OF_95_PERCENT;
  private static final double LAST_DIGIT = 0.51e-8;

  /**
   * 81 of 263 and 0 of 20: Newcombe 1998, Statistics in Medicine 17:857, Table I, method 3 [T]; 18
   * of 20, 1 and 0 of 30: R's binom as statsmodels keeps it [T]; the rest R [R].
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, .25528852, .36620958",
    "0, 20, 0, .16112516",
    "18, 20, .69896635, .97213352",
    "1, 30, .00590859, .16670391",
    "0, 30, 0, .11351339",
    "7, 10, .39677815, .89220873",
    "10, 10, .7224672, 1",
    "45, 50, .78639769, .95652424",
  })
  void wilsonsLimitsAreThePublishedOnes(double made, double of, double lower, double upper) {
    Estimate estimate = new Proportion(made, of - made).wilson(CONFIDENCE);

    assertThat(estimate.value()).isEqualTo(made / of);
    assertThat(estimate.lower()).isCloseTo(lower, within(LAST_DIGIT));
    assertThat(estimate.upper()).isCloseTo(upper, within(LAST_DIGIT));
  }

  /** NIST/SEMATECH e-Handbook 7.2.4.1 [S], with the quantile unrounded [R]. */
  @Test
  void wilsonsOneSidedLimitIsNists() {
    Estimate estimate = new Proportion(26, 200 - 26).wilson(Confidence.of(0.90));

    assertThat(estimate.lower()).isCloseTo(.09577275, within(LAST_DIGIT));
  }

  /** Eight of ten proves little [D]. */
  @Test
  void eightOfTenProvesLittle() {
    Estimate estimate = new Proportion(8, 2).wilson(CONFIDENCE);

    assertThat(estimate.lower()).isCloseTo(0.490, within(0.0005));
    assertThat(estimate.upper()).isCloseTo(0.943, within(0.0005));
  }

  /** 18 of 20: R's binom as statsmodels keeps it [T]; the others R, equal-tailed [R]. */
  @ParameterizedTest
  @CsvSource({
    "81, 263, .25452194, .36564750",
    "18, 20, .71614674, .97862751",
    "0, 20, 0, .11663898",
    "7, 10, .39418168, .90730541",
    "10, 10, .78280373, 1",
    "45, 50, .79464517, .96080564",
  })
  void jeffreysLimitsAreThePublishedOnes(double made, double of, double lower, double upper) {
    Estimate estimate = new Proportion(made, of - made).jeffreys(CONFIDENCE);

    assertThat(estimate.lower()).isCloseTo(lower, within(LAST_DIGIT));
    assertThat(estimate.upper()).isCloseTo(upper, within(LAST_DIGIT));
  }

  /**
   * Brown, Cai and DasGupta 2001, Statistical Science 16:101, Table 5 [M], with R's digits [R]: of
   * 7. The table's modified interval differs at the upper limit of 0 and at the lower one of 1.
   */
  @ParameterizedTest
  @CsvSource({"2, .064728, .647662", "3, .138864, .765499"})
  void jeffreysLimitsOfSevenAreThoseOfBrownCaiAndDasGupta(int made, double lower, double upper) {
    Estimate estimate = new Proportion(made, 7 - made).jeffreys(CONFIDENCE);
    Estimate mirrored = new Proportion(7 - made, made).jeffreys(CONFIDENCE);

    assertThat(estimate.lower()).isCloseTo(lower, within(0.51e-6));
    assertThat(estimate.upper()).isCloseTo(upper, within(0.51e-6));
    assertThat(mirrored.lower()).isCloseTo(1 - upper, within(0.51e-6));
    assertThat(mirrored.upper()).isCloseTo(1 - lower, within(0.51e-6));
  }

  @Test
  void whereNoneWasMadeThereIsNoLowerLimitAndWhereAllWereNoUpperOne() {
    assertThat(new Proportion(1, 6).jeffreys(CONFIDENCE).upper())
        .isCloseTo(.500797, within(0.51e-6));
    assertThat(new Proportion(0, 7).jeffreys(CONFIDENCE).lower()).isZero();
    assertThat(new Proportion(7, 0).jeffreys(CONFIDENCE).upper()).isEqualTo(1);
  }

  @Test
  void ofNoneAtAllNothingIsKnown() {
    Proportion none = new Proportion(0, 0);

    assertThat(none.wilson(CONFIDENCE)).isEqualTo(new Estimate(0.5, 0, 1));
    assertThat(none.jeffreys(CONFIDENCE)).isEqualTo(new Estimate(0.5, 0, 1));
  }

  @Test
  void ofNextToNothingNextToNothingIsKnown() {
    for (double weight : new double[] {1e-100, 1e-12, 1e-3}) {
      Estimate made = new Proportion(weight, 0).wilson(CONFIDENCE);
      Estimate both = new Proportion(weight, weight).wilson(CONFIDENCE);

      assertThat(made.lower()).isBetween(0.0, 0.001);
      assertThat(made.upper()).isEqualTo(1);
      assertThat(both.lower()).isBetween(0.0, 0.001);
      assertThat(both.upper()).isBetween(0.999, 1.0);
    }
  }

  @Test
  void aMillionRepsAreHardlyInDoubt() {
    Estimate estimate = new Proportion(900_000, 100_000).wilson(CONFIDENCE);

    assertThat(estimate.lower()).isCloseTo(0.9, within(0.0006));
    assertThat(estimate.upper()).isCloseTo(0.9, within(0.0006));
  }

  /** A weight is that much of a rep: between whole numbers the limits lie between theirs. */
  @Test
  void aFractionOfARepCountsAsThatMuch() {
    Estimate seven = new Proportion(7, 3).wilson(CONFIDENCE);
    Estimate more = new Proportion(7.5, 3).wilson(CONFIDENCE);
    Estimate eight = new Proportion(8, 3).wilson(CONFIDENCE);

    assertThat(more.lower()).isBetween(seven.lower(), eight.lower());
    assertThat(more.upper()).isBetween(seven.upper(), eight.upper());
  }

  @Test
  void theLimitsHoldTheShareAndMirrorEachOther() {
    for (double made = 0; made <= 12; made += 0.75) {
      for (double missed = 0; missed <= 12; missed += 0.75) {
        Estimate wilson = new Proportion(made, missed).wilson(CONFIDENCE);
        Estimate jeffreys = new Proportion(made, missed).jeffreys(CONFIDENCE);
        Estimate mirrored = new Proportion(missed, made).wilson(CONFIDENCE);

        assertThat(wilson.value()).isBetween(wilson.lower(), wilson.upper());
        assertThat(jeffreys.value()).isBetween(jeffreys.lower(), jeffreys.upper());
        assertThat(mirrored.lower()).isCloseTo(1 - wilson.upper(), within(1e-12));
      }
    }
  }

  /** Reps of many half-lives ago weigh next to nothing, and still have limits between 0 and 1. */
  @Test
  void theLimitsLieBetweenNothingAndAll() {
    for (int halfLivesMade = 0; halfLivesMade <= 70; halfLivesMade++) {
      for (int halfLivesMissed = 0; halfLivesMissed <= 70; halfLivesMissed++) {
        Proportion rare =
            new Proportion(Math.pow(0.5, halfLivesMade), Math.pow(0.5, halfLivesMissed));
        Estimate wilson = rare.wilson(CONFIDENCE);

        assertThat(wilson.lower()).isBetween(0.0, rare.share());
        assertThat(wilson.upper()).isBetween(rare.share(), 1.0);
      }
    }
  }

  @Test
  void whatCannotBeCountedIsRefused() {
    assertThatThrownBy(() -> new Proportion(-1, 2)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Proportion(1, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Any table of the normal and of the chi-square distribution [D]. */
  @Test
  void theQuantilesAreThoseOfTheTables() {
    assertThat(CONFIDENCE.z()).isCloseTo(1.959963985, within(1e-9));
    assertThat(CONFIDENCE.cut()).isCloseTo(3.841458821, within(1e-9));
    assertThat(Confidence.of(0.95).z()).isCloseTo(CONFIDENCE.z(), within(1e-15));
    assertThat(Confidence.of(0.90).z()).isCloseTo(1.644853627, within(1e-9));
  }
}
