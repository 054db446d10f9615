package dev.poleward.domain.mastery;

import static dev.poleward.domain.mastery.PublishedTrials.about;
import static dev.poleward.domain.mastery.PublishedTrials.beetles;
import static dev.poleward.domain.mastery.PublishedTrials.fourSeparable;
import static dev.poleward.domain.mastery.PublishedTrials.heartDisease;
import static dev.poleward.domain.mastery.PublishedTrials.thirtySeparable;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Limits of a threshold, beyond those that are published with {@link PublishedFitsTest}. */
class ThresholdLimitsTest {

  private static final double FOUR_FIFTHS = Logit.of(0.8);
  private static final double Z = Confidence.OF_95_PERCENT.z();

  /** g = 3.7456 [R]. */
  @Test
  void fiellersLimitsOfFourSeparableTrialsAreNone() {
    LogisticFit fit = FirthLogistic.fit(fourSeparable());

    assertThat(Z * Z * fit.varianceOfSlope() / (fit.slope() * fit.slope()))
        .isCloseTo(3.7456, within(0.51e-4));
    assertThat(FiellerLimits.of(fit, FOUR_FIFTHS)).isEqualTo(Limits.NONE);
  }

  /** R [R]. */
  @Test
  void fiellersLimitsOfThirtySeparableTrials() {
    Limits limits = FiellerLimits.of(FirthLogistic.fit(thirtySeparable()), FOUR_FIFTHS);

    assertThat(limits.lower()).isCloseTo(33.052095, about(33.052095, 6));
    assertThat(limits.upper()).isCloseTo(65.399621, about(65.399621, 6));
  }

  /** Of two rays, the one that holds the threshold: on the other the curve would have to rise. */
  @Test
  void ofFiellersTwoRaysOnlyTheOneWithTheThresholdIsGiven() {
    LogisticFit above = new LogisticFit(3, -.02, .1, 0, .00015, 0);
    LogisticFit below = new LogisticFit(-3, -.02, .1, 0, .00015, 0);

    Limits limits = FiellerLimits.of(above, 0);
    Limits mirrored = FiellerLimits.of(below, 0);

    assertThat(limits.lower()).isLessThan(above.placeAt(0)).isPositive();
    assertThat(limits.upper()).isNull();
    assertThat(mirrored.lower()).isNull();
    assertThat(mirrored.upper()).isCloseTo(-some(limits.lower()), within(1e-9));
  }

  /** By the definition: at a limit the height is off by just its error times the quantile. */
  @Test
  void fiellersLimitsAreWhereTheHeightIsOffByItsErrorTimesTheQuantile() {
    Random random = new Random(5);
    int found = 0;
    for (int dog = 0; dog < 3_000; dog++) {
      LogisticFit fit = FirthLogistic.fit(RandomTrials.any(random));
      Limits limits = FiellerLimits.of(fit, FOUR_FIFTHS);
      for (Double limit : new Double[] {limits.lower(), limits.upper()}) {
        if (limit != null) {
          found++;
          double off = fit.intercept() + fit.slope() * limit - FOUR_FIFTHS;
          assertThat(off * off / (Z * Z * fit.varianceAt(limit))).isCloseTo(1, within(1e-5));
        }
      }
      if (limits.lower() != null) {
        assertThat(limits.lower()).isLessThanOrEqualTo(fit.placeAt(FOUR_FIFTHS));
      }
      if (limits.upper() != null) {
        assertThat(limits.upper()).isGreaterThanOrEqualTo(fit.placeAt(FOUR_FIFTHS));
      }
    }
    assertThat(found).isGreaterThan(1_000);
  }

  @Test
  void withManyRepsAllMethodsAgree() {
    LogisticFit fit = FirthLogistic.fit(manyReps());

    Limits delta = DeltaLimits.of(fit, FOUR_FIFTHS);
    Limits fieller = FiellerLimits.of(fit, FOUR_FIFTHS);
    Limits profile = ProfileLimits.of(manyReps(), fit, FOUR_FIFTHS, Range.SIZES);

    assertThat(fieller.lower()).isCloseTo(some(delta.lower()), within(0.01));
    assertThat(fieller.upper()).isCloseTo(some(delta.upper()), within(0.01));
    assertThat(profile.lower()).isCloseTo(some(delta.lower()), within(0.01));
    assertThat(profile.upper()).isCloseTo(some(delta.upper()), within(0.01));
  }

  private static Trials manyReps() {
    double[] places = {0, 15, 30, 45, 60, 75, 90};
    double[] made = {99_000, 97_000, 91_000, 78_000, 55_000, 30_000, 13_000};
    double[] missed = {1_000, 3_000, 9_000, 22_000, 45_000, 70_000, 87_000};
    return new Trials(places, made, missed);
  }

  /** The same places are found in any unit: ages in years, and doses whose logarithm is below 2. */
  @Test
  void theProfileEndsWhereItHasFallenByTheCut() {
    assertAtTheCut(heartDisease(), new Range(0, 180));
    assertAtTheCut(beetles(), new Range(1, 3));
    assertAtTheCut(thirtySeparable(), new Range(0, 180));
  }

  private static void assertAtTheCut(Trials trials, Range range) {
    LogisticFit fit = FirthLogistic.fit(trials);
    Limits limits = ProfileLimits.of(trials, fit, FOUR_FIFTHS, range);
    NaiveProfile naive = new NaiveProfile(trials, FOUR_FIFTHS, Math.signum(fit.slope()));

    assertThat(limits.lower()).isLessThan(fit.placeAt(FOUR_FIFTHS));
    assertThat(limits.upper()).isGreaterThan(fit.placeAt(FOUR_FIFTHS));
    assertThat(naive.fall(fit, some(limits.lower()))).isCloseTo(Z * Z / 2, within(1e-6));
    assertThat(naive.fall(fit, some(limits.upper()))).isCloseTo(Z * Z / 2, within(1e-6));
  }

  /** Held against a profile that is computed in another way, place by place, for made-up trials. */
  @Test
  void insideTheLimitsTheProfileIsAboveTheCutAndWithoutALimitItStaysThere() {
    Random random = new Random(7);
    int limitsSeen = 0;
    int nonesSeen = 0;
    for (int dog = 0; dog < 400; dog++) {
      Trials trials = RandomTrials.any(random);
      LogisticFit fit = FirthLogistic.fit(trials);
      double threshold = fit.placeAt(FOUR_FIFTHS);
      Limits limits = ProfileLimits.of(trials, fit, FOUR_FIFTHS, Range.SIZES);
      NaiveProfile naive = new NaiveProfile(trials, FOUR_FIFTHS, Math.signum(fit.slope()));
      for (boolean up : new boolean[] {false, true}) {
        double end = up ? Range.SIZES.greatest() : 0;
        if (!((end - threshold) * (up ? 1 : -1) > 0)) {
          continue;
        }
        Double limit = up ? limits.upper() : limits.lower();
        double inner = limit == null ? end : limit;
        for (int step = 1; step < 8; step++) {
          double place = threshold + (inner - threshold) * step / 8;
          assertThat(naive.fall(fit, place)).as("dog %d at %s", dog, place).isLessThan(Z * Z / 2);
        }
        if (limit == null) {
          nonesSeen++;
        } else {
          limitsSeen++;
          assertThat(naive.fall(fit, limit)).as("dog %d", dog).isCloseTo(Z * Z / 2, within(1e-5));
        }
      }
    }
    assertThat(limitsSeen).isGreaterThan(100);
    assertThat(nonesSeen).isGreaterThan(100);
  }

  private static double some(@Nullable Double limit) {
    return Objects.requireNonNull(limit);
  }

  /** The profile by its definition: a search over the slope, with the determinant written out. */
  private record NaiveProfile(Trials trials, double height, double direction) {

    /** How far the best curve through a place, sloping as the fit does, lies below the fit. */
    double fall(LogisticFit fit, double place) {
      double best = Double.NEGATIVE_INFINITY;
      double bestLog = 0;
      for (double log = -12; log <= 5; log += 0.05) {
        double value = at(place, log);
        if (value > best) {
          best = value;
          bestLog = log;
        }
      }
      double low = bestLog - 0.1;
      double high = bestLog + 0.1;
      for (int i = 0; i < 100; i++) {
        double one = low + (high - low) / 3;
        double other = high - (high - low) / 3;
        if (at(place, one) < at(place, other)) {
          low = one;
        } else {
          high = other;
        }
      }
      return fit.penalisedLogLikelihood() - Math.max(best, at(place, low));
    }

    private double at(double place, double logOfSlope) {
      double slope = direction * Math.exp(logOfSlope);
      double logLikelihood = 0;
      double a = 0;
      double b = 0;
      double c = 0;
      for (int i = 0; i < trials.size(); i++) {
        double x = trials.place(i);
        double logit = height + slope * (x - place);
        double p = 1 / (1 + Math.exp(-logit));
        logLikelihood -= trials.made(i) * Math.log1p(Math.exp(-logit));
        logLikelihood -= trials.missed(i) * Math.log1p(Math.exp(logit));
        double v = trials.weight(i) * p * (1 - p);
        a += v;
        b += v * x;
        c += v * x * x;
      }
      double determinant = a * c - b * b;
      double value = logLikelihood + Math.log(determinant) / 2;
      return determinant > 1e-10 * a * c && Double.isFinite(value)
          ? value
          : Double.NEGATIVE_INFINITY;
    }
  }
}
