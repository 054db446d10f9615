package dev.poleward.domain.mastery;

import static dev.poleward.domain.mastery.PublishedTrials.about;
import static dev.poleward.domain.mastery.PublishedTrials.fourSeparable;
import static dev.poleward.domain.mastery.PublishedTrials.heartDisease;
import static dev.poleward.domain.mastery.PublishedTrials.ofTried;
import static dev.poleward.domain.mastery.PublishedTrials.thirtySeparable;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Errors here are the inverse expected information at the estimate, one of two conventions. */
class FirthLogisticTest {

  private static final double FOUR_FIFTHS = Logit.of(0.8);

  /** Two places are the logits with half a trial more on either side: exact algebra, and R [R]. */
  @ParameterizedTest
  @CsvSource({
    "0, 10, 7, 10, -3.044522438, 3.806662490, 1.518144, 1.663044",
    "3, 12, 9, 12, -.998528830, 1.997057660, .650814, .920390",
    "0, 8, 8, 8, -2.833213344, 5.666426688, 1.543487, 2.182821",
  })
  void twoPlacesAreTheLogitsWithHalfATrialMoreOnEitherSide(
      double firstMade,
      double firstOf,
      double secondMade,
      double secondOf,
      double intercept,
      double slope,
      double errorOfIntercept,
      double errorOfSlope) {
    LogisticFit fit =
        FirthLogistic.fit(
            ofTried(
                new double[] {0, 1},
                new double[] {firstOf, secondOf},
                new double[] {firstMade, secondMade}));

    assertThat(fit.intercept()).isCloseTo(intercept, about(intercept, 9));
    assertThat(fit.slope()).isCloseTo(slope, about(slope, 9));
    assertThat(Math.sqrt(fit.varianceOfIntercept()))
        .isCloseTo(errorOfIntercept, about(errorOfIntercept, 6));
    assertThat(Math.sqrt(fit.varianceOfSlope())).isCloseTo(errorOfSlope, about(errorOfSlope, 6));
  }

  /** R [R]. */
  @Test
  void fourSeparableTrialsHaveAFiniteCurve() {
    LogisticFit fit = FirthLogistic.fit(fourSeparable());

    assertThat(fit.intercept()).isCloseTo(-3.274757, about(-3.274757, 6));
    assertThat(fit.slope()).isCloseTo(1.309903, about(1.309903, 6));
    assertThat(Math.sqrt(fit.varianceOfIntercept())).isCloseTo(3.458127, about(3.458127, 6));
    assertThat(Math.sqrt(fit.varianceOfSlope())).isCloseTo(1.293451, about(1.293451, 6));
    assertThat(fit.penalisedLogLikelihood()).isCloseTo(-1.559896, about(-1.559896, 6));
    assertThat(fit.placeAt(FOUR_FIFTHS)).isCloseTo(3.558318, about(3.558318, 6));
    assertThat(DeltaLimits.standardError(fit, fit.placeAt(FOUR_FIFTHS)))
        .isCloseTo(1.402719, about(1.402719, 6));
  }

  /** R [R]. */
  @Test
  void thirtySeparableTrialsHaveAFiniteCurve() {
    LogisticFit fit = FirthLogistic.fit(thirtySeparable());

    assertThat(fit.intercept()).isCloseTo(-16.084760, about(-16.084760, 6));
    assertThat(fit.slope()).isCloseTo(.4595646, about(.4595646, 7));
    assertThat(Math.sqrt(fit.varianceOfIntercept())).isCloseTo(7.366054, about(7.366054, 6));
    assertThat(Math.sqrt(fit.varianceOfSlope())).isCloseTo(.2081368, about(.2081368, 7));
    assertThat(fit.placeAt(0)).isCloseTo(35, within(1e-9));
    assertThat(fit.placeAt(FOUR_FIFTHS)).isCloseTo(38.016539, about(38.016539, 6));
    assertThat(DeltaLimits.standardError(fit, fit.placeAt(FOUR_FIFTHS)))
        .isCloseTo(2.739325, about(2.739325, 6));
  }

  /** R [R]: where the penalised profile of the slope has fallen by half of 3.8415. */
  @Test
  void theProfileOfTheSlopeEndsWhereItDoesInR() {
    assertThat(slopeLimit(fourSeparable(), -10)).isCloseTo(-.347842, about(-.347842, 6));
    assertThat(slopeLimit(fourSeparable(), 10)).isCloseTo(6.698098, about(6.698098, 6));
    assertThat(slopeLimit(thirtySeparable(), -1)).isCloseTo(.155005, about(.155005, 6));
    assertThat(slopeLimit(thirtySeparable(), 2)).isCloseTo(1.051161, about(1.051161, 6));
  }

  private static double slopeLimit(Trials trials, double beyond) {
    LogisticFit fit = FirthLogistic.fit(trials);
    Ascent ascent = Ascent.of(trials, Penalty.FIRTH);
    double least = fit.penalisedLogLikelihood() - Confidence.OF_95_PERCENT.cut() / 2;
    double inside = fit.slope();
    double outside = beyond;
    for (int halving = 0; halving < 60; halving++) {
      double middle = (inside + outside) / 2;
      ascent.toTheTopOf(Line.ofSlope(middle), 0);
      if (ascent.surface().value() > least) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }

  @Test
  void allMadeIsAFlatCurveHighUp() {
    LogisticFit fit =
        FirthLogistic.fit(ofTried(new double[] {0, 30}, new double[] {9, 9}, new double[] {9, 9}));

    assertThat(fit.slope()).isCloseTo(0, within(1e-9));
    assertThat(fit.at(15)).isCloseTo(9.5 / 10, within(1e-9));
  }

  /** A weight counts as that much of a trial, however it comes about. */
  @Test
  void twoHalvesAreOneTrial() {
    double[] places = {0, 15, 30, 45, 60};
    Trials halves =
        new Trials(places, new double[] {4.5, 4, 3.5, 2, .5}, new double[] {0, 1, 1, 3, 4});
    double[] twice = {9, 8, 7, 4, 1};
    LogisticFit half = FirthLogistic.fit(halves);
    LogisticFit whole = FirthLogistic.fit(new Trials(places, twice, new double[] {0, 2, 2, 6, 8}));

    assertThat(half.varianceOfSlope() / whole.varianceOfSlope()).isBetween(1.6, 2.4);
    assertThat(half.slope()).isCloseTo(whole.slope(), within(0.02));
  }

  /** In other units of angle it is the same curve. */
  @Test
  void unitsDoNotMatter() {
    Trials years = heartDisease();
    double[] places = new double[years.size()];
    double[] made = new double[years.size()];
    double[] missed = new double[years.size()];
    for (int i = 0; i < years.size(); i++) {
      places[i] = years.place(i) * 12 + 1_000;
      made[i] = years.made(i);
      missed[i] = years.missed(i);
    }
    LogisticFit inYears = FirthLogistic.fit(years);
    LogisticFit inMonths = FirthLogistic.fit(new Trials(places, made, missed));

    assertThat(inMonths.slope() * 12).isCloseTo(inYears.slope(), within(1e-9));
    assertThat(inMonths.at(44 * 12 + 1_000)).isCloseTo(inYears.at(44), within(1e-9));
    assertThat(inMonths.penalisedLogLikelihood() + Math.log(1 / 12.0))
        .isCloseTo(inYears.penalisedLogLikelihood(), within(1e-9));
  }

  /** Made and missed exchanged, the curve is upside down. */
  @Test
  void exchangingMadeAndMissedTurnsTheCurveUpsideDown() {
    Trials trials = heartDisease();
    double[] places = new double[trials.size()];
    double[] made = new double[trials.size()];
    double[] missed = new double[trials.size()];
    for (int i = 0; i < trials.size(); i++) {
      places[i] = trials.place(i);
      made[i] = trials.made(i);
      missed[i] = trials.missed(i);
    }
    LogisticFit one = FirthLogistic.fit(new Trials(places, made, missed));
    LogisticFit other = FirthLogistic.fit(new Trials(places, missed, made));

    assertThat(other.intercept()).isCloseTo(-one.intercept(), within(1e-9));
    assertThat(other.slope()).isCloseTo(-one.slope(), within(1e-11));
  }

  /** Whatever the trials: a summit, with the penalised score at 0, and the errors finite. */
  @Test
  void anyTrialsAtTwoPlacesHaveASummit() {
    Random random = new Random(20_260_504);
    for (int dog = 0; dog < 3_000; dog++) {
      Trials trials = RandomTrials.any(random);
      LogisticFit fit = FirthLogistic.fit(trials);
      LikelihoodSurface surface = new LikelihoodSurface(trials, Penalty.FIRTH);

      double value = surface.stand(fit.intercept(), fit.slope());

      double left =
          surface.scoreOfHeight() * surface.scoreOfHeight() / surface.bend().sum()
              + surface.scoreOfSlope() * surface.scoreOfSlope() / surface.bend().spread();
      assertThat(left).as("dog %d", dog).isLessThan(1e-15);
      assertThat(fit.varianceOfSlope()).isFinite().isPositive();
      double away = 3 * random.nextDouble();
      double turn = (random.nextDouble() - 0.5) * away / Math.sqrt(surface.information().spread());
      assertThat(surface.stand(fit.intercept() + away - 1.5, fit.slope() + turn))
          .isLessThanOrEqualTo(value + 1e-9);
    }
  }
}
