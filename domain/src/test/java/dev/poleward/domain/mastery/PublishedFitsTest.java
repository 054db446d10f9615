package dev.poleward.domain.mastery;

import static dev.poleward.domain.mastery.PublishedTrials.about;
import static dev.poleward.domain.mastery.PublishedTrials.beetles;
import static dev.poleward.domain.mastery.PublishedTrials.heartDisease;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The logistic core against two worked examples. What is printed in the books is [M] for the
 * beetles and [T] for heart disease; the further digits, and all of the Firth fits, are R's [R].
 */
class PublishedFitsTest {

  private static final double HALF = Logit.of(0.5);
  private static final double FOUR_FIFTHS = Logit.of(0.8);

  @Test
  void theBeetlesCurveIsDobsons() {
    LogisticFit fit = PlainLogistic.fit(beetles());

    assertThat(fit.intercept()).isCloseTo(-60.717455, about(-60.717455, 6));
    assertThat(fit.slope()).isCloseTo(34.270326, about(34.270326, 6));
    assertThat(Math.sqrt(fit.varianceOfIntercept())).isCloseTo(5.180711, about(5.180711, 6));
    assertThat(Math.sqrt(fit.varianceOfSlope())).isCloseTo(2.912140, about(2.912140, 6));
    assertThat(fit.covariance()).isCloseTo(-15.082151, about(-15.082151, 6));
  }

  @Test
  void theBeetlesFittedDeathsAndDevianceAreDobsons() {
    Trials beetles = beetles();
    LogisticFit fit = PlainLogistic.fit(beetles);
    double[] fitted = {
      3.45746, 9.84167, 22.45138, 33.89763, 50.09582, 53.29091, 59.22216, 58.74296
    };
    double deviance = 0;
    for (int i = 0; i < beetles.size(); i++) {
      double expected = beetles.weight(i) * fit.at(beetles.place(i));
      assertThat(expected).isCloseTo(fitted[i], about(fitted[i], 5));
      deviance += 2 * surprise(beetles.made(i), expected);
      deviance += 2 * surprise(beetles.missed(i), beetles.weight(i) - expected);
    }
    assertThat(deviance).isCloseTo(11.232231, about(11.232231, 6));
  }

  private static double surprise(double observed, double expected) {
    return observed == 0 ? 0 : observed * Math.log(observed / expected);
  }

  /** The error of the median dose is printed, by R's investr [T]. */
  @Test
  void theBeetlesThresholdsByTheDeltaMethod() {
    LogisticFit fit = PlainLogistic.fit(beetles());

    assertThat(fit.placeAt(HALF)).isCloseTo(1.771721, about(1.771721, 6));
    assertThat(DeltaLimits.standardError(fit, fit.placeAt(HALF)))
        .isCloseTo(.003858052, within(1e-8));
    assertThat(fit.placeAt(FOUR_FIFTHS)).isCloseTo(1.812173, about(1.812173, 6));
    assertThat(DeltaLimits.standardError(fit, fit.placeAt(FOUR_FIFTHS)))
        .isCloseTo(.00477245, within(0.51e-8));
    assertLimits(DeltaLimits.of(fit, FOUR_FIFTHS), 1.802819, 1.821527);
  }

  @Test
  void theBeetlesThresholdsByFiellersTheorem() {
    LogisticFit fit = PlainLogistic.fit(beetles());

    assertLimits(FiellerLimits.of(fit, HALF), 1.763858, 1.779200);
    assertLimits(FiellerLimits.of(fit, FOUR_FIFTHS), 1.803600, 1.822670);
  }

  @Test
  void theBeetlesFirthCurve() {
    LogisticFit fit = FirthLogistic.fit(beetles());

    assertThat(fit.intercept()).isCloseTo(-60.113771, about(-60.113771, 6));
    assertThat(fit.slope()).isCloseTo(33.930130, about(33.930130, 6));
    assertThat(Math.sqrt(fit.varianceOfIntercept())).isCloseTo(5.131142, about(5.131142, 6));
    assertThat(Math.sqrt(fit.varianceOfSlope())).isCloseTo(2.884119, about(2.884119, 6));
    assertThat(fit.placeAt(FOUR_FIFTHS)).isCloseTo(1.812550, about(1.812550, 6));
    assertThat(DeltaLimits.standardError(fit, fit.placeAt(FOUR_FIFTHS)))
        .isCloseTo(.00480527, within(0.51e-8));
  }

  @Test
  void heartDiseaseIsHosmersAndLemeshows() {
    LogisticFit fit = PlainLogistic.fit(heartDisease());

    assertThat(fit.intercept()).isCloseTo(-5.309453, about(-5.309453, 6));
    assertThat(fit.slope()).isCloseTo(.1109211, about(.1109211, 7));
    assertThat(Math.sqrt(fit.varianceOfIntercept())).isCloseTo(1.133655, about(1.133655, 6));
    assertThat(Math.sqrt(fit.varianceOfSlope())).isCloseTo(.0240598, about(.0240598, 7));
    assertThat(fit.covariance()).isCloseTo(-.02667702, about(-.02667702, 8));
    assertThat(fit.penalisedLogLikelihood()).isCloseTo(-53.676546, about(-53.676546, 6));
  }

  @Test
  void heartDiseasesThresholds() {
    LogisticFit fit = PlainLogistic.fit(heartDisease());

    assertThat(fit.placeAt(HALF)).isCloseTo(47.866919, about(47.866919, 6));
    assertThat(DeltaLimits.standardError(fit, fit.placeAt(HALF)))
        .isCloseTo(2.164144, about(2.164144, 6));
    assertLimits(FiellerLimits.of(fit, HALF), 43.557512, 52.962911);
    assertThat(fit.placeAt(FOUR_FIFTHS)).isCloseTo(60.364937, about(60.364937, 6));
    assertThat(DeltaLimits.standardError(fit, fit.placeAt(FOUR_FIFTHS)))
        .isCloseTo(3.758894, about(3.758894, 6));
    assertLimits(DeltaLimits.of(fit, FOUR_FIFTHS), 52.99764, 67.73223);
    assertLimits(FiellerLimits.of(fit, FOUR_FIFTHS), 54.787507, 72.243397);
  }

  @Test
  void heartDiseasesFirthCurve() {
    LogisticFit fit = FirthLogistic.fit(heartDisease());

    assertThat(fit.intercept()).isCloseTo(-5.123760, about(-5.123760, 6));
    assertThat(fit.slope()).isCloseTo(.106996, about(.106996, 6));
    assertThat(Math.sqrt(fit.varianceOfIntercept())).isCloseTo(1.111552, about(1.111552, 6));
    assertThat(Math.sqrt(fit.varianceOfSlope())).isCloseTo(.023610, about(.023610, 6));
    assertThat(fit.placeAt(FOUR_FIFTHS)).isCloseTo(60.844047, about(60.844047, 6));
    assertThat(DeltaLimits.standardError(fit, fit.placeAt(FOUR_FIFTHS)))
        .isCloseTo(3.934714, about(3.934714, 6));
  }

  private static void assertLimits(Limits limits, double lower, double upper) {
    assertThat(limits.lower()).isCloseTo(lower, about(lower, 5));
    assertThat(limits.upper()).isCloseTo(upper, about(upper, 5));
  }
}
