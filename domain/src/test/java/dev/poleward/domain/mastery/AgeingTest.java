package dev.poleward.domain.mastery;

import static dev.poleward.domain.mastery.Logbook.logbook;
import static dev.poleward.domain.mastery.MasteryCurveTest.assertNotEnough;
import static dev.poleward.domain.mastery.MasteryCurveTest.fit;
import static dev.poleward.domain.mastery.MasteryCurveTest.pole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.mastery.Threshold.Estimated;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** How much a rep weighs, as it grows old. */
class AgeingTest {

  private static final Duration MINUTES = Duration.ofMinutes(10);

  @Test
  void afterAHalfLifeARepWeighsHalf() {
    Logbook reps = logbook().at(45, 1, 0).daysLater(30).at(45, 1, 0);

    SideMastery side = pole(reps.curve(Questions.withHalfLife(30)));

    assertThat(side.effectiveReps()).isCloseTo(1.5, within(1e-4));
    assertThat(side.points().getFirst().weight()).isEqualTo(side.effectiveReps());
  }

  @Test
  void withoutAHalfLifeAllWeighAlike() {
    Logbook reps = logbook().at(45, 1, 0).daysLater(3_000).at(45, 1, 0);

    assertThat(pole(reps.curve()).effectiveReps()).isEqualTo(2);
  }

  @Test
  void aRepThatIsYetToComeHasNoAge() {
    Logbook reps = logbook().at(45, 3, 0);

    MasteryCurve before =
        MasteryCurve.of(reps.reps(), Questions.withHalfLife(1), Logbook.START.minus(MINUTES));

    assertThat(pole(before).effectiveReps()).isEqualTo(3);
  }

  @Test
  void whatADogCanDoNowCountsMoreThanWhatItCouldNotThen() {
    Logbook reps =
        logbook().at(15, 8, 2).at(45, 2, 8).daysLater(120).at(15, 10, 0).at(45, 9, 1).at(75, 3, 7);

    Estimated alike = (Estimated) pole(reps.curve()).threshold();
    Estimated aged = (Estimated) pole(reps.curve(Questions.withHalfLife(20))).threshold();

    assertThat(aged.degrees()).isGreaterThan(alike.degrees() + 5);
  }

  /** Weights near zero: what is left is less than one rep. */
  @Test
  void ofRepsThatWeighNextToNothingNothingIsEstimated() {
    Logbook reps = logbook().at(15, 50, 5).at(45, 30, 30);

    for (double days : new double[] {10, 100, 1_000, 100_000}) {
      MasteryCurve later =
          MasteryCurve.of(
              reps.reps(),
              Questions.withHalfLife(1),
              reps.last().plus(Duration.ofDays((long) days)));

      assertNotEnough(pole(later));
      assertThat(pole(later).reps()).isEqualTo(115);
      assertThat(pole(later).points())
          .allSatisfy(point -> assertThat(point.weight()).isPositive())
          .allSatisfy(point -> assertThat(point.observed().value()).isBetween(0.0, 1.0))
          .allSatisfy(point -> assertThat(point.isotonic()).isBetween(0.0, 1.0));
      assertThat(pole(later).points().getLast().observed().value()).isCloseTo(0.5, within(0.01));
    }
  }

  /** An angle that was tried long ago only does not make a second one. */
  @Test
  void whereOnlyOneAngleIsLeftOfOldRepsNothingIsEstimated() {
    Logbook reps = logbook().at(45, 20, 5).daysLater(400).at(15, 20, 0);

    SideMastery side = pole(reps.curve(Questions.withHalfLife(30)));

    assertNotEnough(side);
    assertThat(side.points()).hasSize(2);
  }

  @Test
  void aTenthOfARepElsewhereIsASecondAngle() {
    Logbook reps = logbook().at(45, 1, 1).daysLater(30).at(15, 20, 0);

    SideMastery side = pole(reps.curve(Questions.withHalfLife(8)));

    assertThat(side.points().getLast().weight()).isBetween(0.1, 0.2);
    assertThat(fit(side).varianceOfSlope()).isFinite();
    assertThat(fit(side).at(45)).isBetween(0.3, 0.9);
  }

  /** Old reps widen what new ones leave in doubt, and never narrow it. */
  @Test
  void theOlderTheRepsTheWiderTheBand() {
    Logbook reps = logbook().at(0, 20, 0).at(30, 15, 5).at(60, 5, 15);
    double width = 0;
    for (int days = 0; days <= 60; days += 20) {
      SideMastery side =
          pole(
              MasteryCurve.of(
                  reps.reps(),
                  Questions.withHalfLife(30),
                  reps.last().plus(Duration.ofDays(days))));
      Estimate band = fit(side).bandAt(30);

      assertThat(band.upper() - band.lower()).isGreaterThan(width);
      width = band.upper() - band.lower();
    }
  }
}
