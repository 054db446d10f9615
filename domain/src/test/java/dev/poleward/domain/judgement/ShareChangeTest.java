package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareChangeTest {

  /** Newcombe 1998, Statistics in Medicine 17:873, Table II, method 10 [M]; each recomputed. */
  @ParameterizedTest
  @CsvSource({
    "56, 70, 48, 80, .2000, .0524, .3339",
    "9, 10, 3, 10, .6000, .1705, .8090",
    "6, 7, 2, 7, .5714, .0582, .8062",
    "5, 56, 0, 29, .0893, -.0381, .1926",
    "0, 10, 0, 20, .0000, -.1611, .2775",
    "0, 10, 0, 10, .0000, -.2775, .2775",
    "10, 10, 0, 20, 1.0000, .6791, 1.0000",
    "10, 10, 0, 10, 1.0000, .6075, 1.0000",
  })
  void newcombesLimits(
      int clean, int of, int cleanBefore, int before, double change, double lower, double upper) {
    Estimate estimate =
        ShareChange.between(
            new Proportion(cleanBefore, before - cleanBefore),
            new Proportion(clean, of - clean),
            Confidence.OF_95_PERCENT);

    assertThat(estimate.value()).isCloseTo(change, within(0.51e-4));
    assertThat(estimate.lower()).isCloseTo(lower, within(0.51e-4));
    assertThat(estimate.upper()).isCloseTo(upper, within(0.51e-4));
  }

  @Test
  void againstNothingNothingCanBeSaid() {
    Estimate estimate =
        ShareChange.between(new Proportion(0, 0), new Proportion(10, 0), Confidence.OF_95_PERCENT);

    assertThat(estimate.lower()).isLessThanOrEqualTo(0);
    assertThat(estimate.upper()).isCloseTo(1, within(1e-12));
  }
}
