package dev.poleward.domain.mastery;

import static dev.poleward.domain.mastery.Logbook.logbook;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.Threshold.BelowTried;
import dev.poleward.domain.mastery.Threshold.BeyondTried;
import dev.poleward.domain.mastery.Threshold.Estimated;
import dev.poleward.domain.mastery.Threshold.NoFall;
import dev.poleward.domain.mastery.Threshold.NotEnoughReps;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the curve of a dog says, and when it says nothing. */
class MasteryCurveTest {

  @Test
  void aDogThatMissesMoreTheSharperTheAngleHasAThreshold() {
    Logbook juniper =
        logbook().at(0, 20, 0).at(15, 19, 1).at(30, 18, 2).at(45, 14, 6).at(60, 8, 12);

    SideMastery side = pole(juniper.curve());

    assertThat(side.reps()).isEqualTo(100);
    assertThat(side.made()).isEqualTo(79);
    assertThat(side.effectiveReps()).isEqualTo(100);
    Estimated threshold = (Estimated) side.threshold();
    assertThat(fit(side).at(threshold.degrees())).isCloseTo(0.8, within(1e-9));
    assertThat(threshold.degrees()).isBetween(30.0, 45.0);
    assertThat(threshold.lower()).isBetween(20.0, threshold.degrees());
    assertThat(threshold.upper()).isBetween(threshold.degrees(), 60.0);
    assertThat(threshold.limits()).isEqualTo(LimitMethod.PROFILE);
    assertThat(side.shapesDisagree()).isFalse();
  }

  @Test
  void aPointIsGivenForEachAngleTried() {
    SideMastery side = gap(logbook().at(-30, 3, 1).at(0, 4, 0).at(-15, 2, 2).at(-30, 1, 1).curve());

    assertThat(side.points())
        .extracting(point -> point.angle().degrees(), AnglePoint::reps, AnglePoint::made)
        .containsExactly(tuple(0.0, 4, 4), tuple(-15.0, 4, 2), tuple(-30.0, 6, 4));
    AnglePoint last = side.points().getLast();
    assertThat(last.weight()).isEqualTo(6);
    assertThat(last.observed()).isEqualTo(new Proportion(4, 2).wilson(Confidence.OF_95_PERCENT));
    assertThat(last.fitted()).isEqualTo(fit(side).bandAt(30));
    assertThat(side.points()).extracting(AnglePoint::isotonic).containsExactly(1.0, 0.6, 0.6);
  }

  @Test
  void noRepsAreNotEnough() {
    MasteryCurve curve = logbook().curve();

    assertThat(curve.sides())
        .extracting(SideMastery::side)
        .containsExactly(EntrySide.POLE, EntrySide.GAP);
    assertThat(curve.sides()).allSatisfy(MasteryCurveTest::assertNotEnough);
    assertThat(curve.sides()).allSatisfy(side -> assertThat(side.points()).isEmpty());
  }

  @Test
  void fourRepsAreNotEnoughAndFiveAre() {
    assertNotEnough(pole(logbook().at(15, 2, 0).at(60, 1, 1).curve()));
    assertThat(pole(logbook().at(15, 2, 0).at(60, 1, 2).curve()).threshold())
        .isInstanceOf(Estimated.class);
  }

  @Test
  void oneAngleIsNotEnoughHoweverOften() {
    assertNotEnough(pole(logbook().at(45, 300, 200).curve()));
    assertNotEnough(gap(logbook().at(0, 300, 200).at(45, 9, 9).curve()));
  }

  @Test
  void straightOnRepsBelongToBothSides() {
    MasteryCurve curve = logbook().at(0, 6, 0).at(45, 1, 3).at(-60, 2, 2).curve();

    assertThat(pole(curve).reps()).isEqualTo(10);
    assertThat(gap(curve).reps()).isEqualTo(10);
    assertThat(pole(curve).made()).isEqualTo(7);
    assertThat(gap(curve).made()).isEqualTo(8);
  }

  @Test
  void straightOnAloneIsOneAngle() {
    assertThat(logbook().at(0, 30, 4).curve().sides())
        .allSatisfy(MasteryCurveTest::assertNotEnough);
  }

  /** The two are different skills. */
  @Test
  void sidesAreNeverPooledNorMirrored() {
    MasteryCurve both = logbook().at(30, 9, 1).at(60, 5, 5).at(-30, 8, 2).at(-60, 1, 9).curve();
    MasteryCurve poleAlone = logbook().at(30, 9, 1).at(60, 5, 5).curve();
    MasteryCurve gapAlone = logbook().at(-30, 8, 2).at(-60, 1, 9).curve();

    assertThat(pole(both)).isEqualTo(pole(poleAlone));
    assertThat(gap(both)).isEqualTo(gap(gapAlone));
    assertNotEnough(gap(poleAlone));
    assertThat(fit(pole(both))).isNotEqualTo(fit(gap(both)));
  }

  /** A dog that turned left and right alike has the same curve on either side. */
  @Test
  void theSameRecordOnEitherSideGivesTheSameCurve() {
    MasteryCurve curve = logbook().at(30, 9, 1).at(60, 5, 5).at(-30, 9, 1).at(-60, 5, 5).curve();

    assertThat(fit(gap(curve))).isEqualTo(fit(pole(curve)));
    assertThat(gap(curve).threshold()).isEqualTo(pole(curve).threshold());
  }

  @Test
  void allMadeAsOftenAtEachAngleIsACurveThatIsLevel() {
    SideMastery side = pole(logbook().at(0, 10, 0).at(30, 10, 0).at(60, 10, 0).curve());

    assertThat(Math.abs(fit(side).slope())).isLessThan(1e-9);
    assertThat(fit(side).at(30)).isBetween(0.95, 1.0);
    assertThat(side.points()).allSatisfy(point -> assertThat(point.isotonic()).isEqualTo(1));
    assertThat(side.threshold()).isEqualTo(new NoFall());
  }

  @Test
  void allMadeButLessOftenAtSharpAnglesIsInDoubtThere() {
    SideMastery side = pole(logbook().at(0, 30, 0).at(30, 20, 0).at(60, 4, 0).curve());

    BeyondTried beyond = (BeyondTried) side.threshold();
    assertThat(beyond.greatestTried()).isEqualTo(60);
    assertThat(beyond.lower()).isBetween(30.0, 60.0);
  }

  @Test
  void allMissedIsBelowTheLevelAtEveryAngle() {
    SideMastery side = pole(logbook().at(15, 0, 4).at(30, 0, 9).at(60, 0, 20).curve());

    assertThat(side.made()).isZero();
    assertThat(side.threshold()).isEqualTo(new BelowTried(15, null, LimitMethod.PROFILE));
    assertThat(side.points()).allSatisfy(point -> assertThat(point.isotonic()).isZero());
  }

  @Test
  void risingInsteadOfFallingIsNoFall() {
    SideMastery side = pole(logbook().at(0, 2, 8).at(30, 5, 5).at(60, 9, 1).curve());

    assertThat(side.threshold()).isEqualTo(new NoFall());
    assertThat(fit(side).slope()).isPositive();
    assertThat(side.shapesDisagree()).isFalse();
    assertThat(side.points())
        .extracting(AnglePoint::isotonic)
        .allMatch(share -> share == 16 / 30.0);
  }

  /** As good as ever up to an angle, and then one in two: no logistic curve falls like that. */
  @Test
  void aCliffIsNoCurve() {
    Logbook cliff = logbook();
    for (double degrees : new double[] {0, 15, 30, 45}) {
      cliff.at(degrees, 39, 1);
    }
    for (double degrees : new double[] {60, 75, 90}) {
      cliff.at(degrees, 20, 20);
    }

    SideMastery side = pole(cliff.curve());

    assertThat(fit(side).slope()).isNegative();
    assertThat(side.shapesDisagree()).isTrue();
  }

  /** The curve still falls, yet nobody has seen where: no number is made up for it. */
  @ParameterizedTest
  @EnumSource(LimitMethod.class)
  void aboveTheLevelEverywhereItIsBeyondWhatWasTried(LimitMethod method) {
    SideMastery side =
        pole(logbook().at(0, 60, 0).at(30, 59, 1).at(60, 57, 3).curve(Questions.with(method)));

    BeyondTried beyond = (BeyondTried) side.threshold();
    assertThat(beyond.greatestTried()).isEqualTo(60);
    assertThat(beyond.limits()).isEqualTo(method);
    assertThat(fit(side).at(60)).isGreaterThan(0.8);
    assertThat(beyond.lower() == null || (beyond.lower() >= 0 && beyond.lower() <= 60)).isTrue();
  }

  @Test
  void beyondWhatWasTriedALowerLimitAmongTheAnglesTriedIsKept() {
    SideMastery side = pole(logbook().at(0, 12, 0).at(30, 11, 1).at(60, 10, 2).curve());

    BeyondTried beyond = (BeyondTried) side.threshold();
    assertThat(beyond.lower()).isBetween(10.0, 60.0);
  }

  @Test
  void belowTheLevelEverywhereItIsBelowWhatWasTried() {
    SideMastery side = pole(logbook().at(30, 15, 5).at(60, 8, 12).at(90, 1, 19).curve());

    BelowTried below = (BelowTried) side.threshold();
    assertThat(below.leastTried()).isEqualTo(30);
    assertThat(below.upper()).isBetween(30.0, 60.0);
    assertThat(fit(side).at(30)).isLessThan(0.8);
  }

  @Test
  void farBelowTheLevelItIsBelowWhatWasTriedWithoutDoubt() {
    SideMastery side = pole(logbook().at(30, 10, 10).at(60, 6, 14).at(90, 1, 19).curve());

    assertThat(side.threshold()).isEqualTo(new BelowTried(30, null, LimitMethod.PROFILE));
  }

  @Test
  void anotherLevelIsAnotherThresholdOnTheSameCurve() {
    Logbook juniper = logbook().at(0, 20, 0).at(30, 18, 2).at(60, 8, 12).at(90, 2, 18);

    SideMastery high = pole(juniper.curve(Questions.atLevel(0.9)));
    SideMastery half = pole(juniper.curve(Questions.atLevel(0.5)));

    assertThat(high.fit()).isEqualTo(half.fit());
    Estimated sooner = (Estimated) high.threshold();
    Estimated later = (Estimated) half.threshold();
    assertThat(sooner.degrees()).isLessThan(later.degrees());
    assertThat(fit(half).at(later.degrees())).isCloseTo(0.5, within(1e-9));
  }

  /** A level of all but nothing lies beyond any angle there is. */
  @Test
  void aLimitThatIsNoAngleIsAbsent() {
    Logbook juniper = logbook().at(0, 6, 0).at(60, 5, 1).at(165, 3, 3);

    Estimated threshold = (Estimated) pole(juniper.curve()).threshold();

    assertThat(threshold.lower()).isNull();
    assertThat(threshold.upper()).isNull();
  }

  @Test
  void aMillionRepsAreNoTroubleAndLeaveLittleDoubt() {
    Trials trials =
        new Trials(
            new double[] {0, 45, 90},
            new double[] {990_000, 800_000, 120_000},
            new double[] {10_000, 200_000, 880_000});
    LogisticFit fit = FirthLogistic.fit(trials);

    Estimated threshold = (Estimated) Threshold.of(trials, fit, 0.8, LimitMethod.PROFILE);

    assertThat(threshold.lower()).isCloseTo(threshold.degrees(), within(0.2));
    assertThat(threshold.upper()).isCloseTo(threshold.degrees(), within(0.2));
  }

  static SideMastery pole(MasteryCurve curve) {
    return curve.sides().getFirst();
  }

  static SideMastery gap(MasteryCurve curve) {
    return curve.sides().getLast();
  }

  static LogisticFit fit(SideMastery side) {
    return Objects.requireNonNull(side.fit());
  }

  static void assertNotEnough(SideMastery side) {
    assertThat(side.threshold()).isEqualTo(new NotEnoughReps());
    assertThat(side.fit()).isNull();
    assertThat(side.shapesDisagree()).isFalse();
    assertThat(side.points()).allSatisfy(point -> assertThat(point.fitted()).isNull());
    assertThat(List.of(side.effectiveReps())).doesNotContain(Double.NaN);
  }
}
