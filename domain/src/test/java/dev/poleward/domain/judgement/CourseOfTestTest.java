package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CourseOfTestTest {

  private static final Offset<Double> OF_CHANCE = within(0.51e-6);
  private static final Offset<Double> OF_REPS = within(0.51e-4);

  /** Wald's formulas for the plans of NIST 6.2.6 and Montgomery [R]: share missed, then values. */
  @ParameterizedTest
  @CsvSource({
    "NIST, 0, 1, 23.62069",
    "NIST, .01, .95, 27.95702",
    "NIST, .10, .10, 16.44668",
    "NIST, 1, 0, 1.255273",
    "NIST .20, 0, 1, 16.34814",
    "NIST .20, .01, .95, 18.80814",
    "NIST .20, .10, .20, 13.19526",
    "NIST .20, 1, 0, 1.204120",
    "Montgomery, 0, 1, 43.44021",
    "Montgomery, .01, .95, 59.72612",
    "Montgomery, .06, .10, 40.41853",
    "Montgomery, 1, 0, 1.613147",
  })
  void waldsFormulasGiveWhatRGives(String plan, double missed, double moveOn, double reps) {
    CourseOfTest course = WaldApproximation.of(PublishedPlans.named(plan), 1 - missed);

    assertThat(course.moveOn()).isCloseTo(moveOn, OF_CHANCE);
    assertThat(course.reps()).isCloseTo(reps, OF_REPS);
  }

  /** At the slope of the lines the balance goes nowhere [R]. */
  @ParameterizedTest
  @CsvSource({
    "NIST, .562147, 29.65040",
    "NIST .20, .640212, 19.68513",
    "Montgomery, .562147, 70.07545",
  })
  void waldsFormulasGiveWhatRGivesWhereTheBalanceGoesNowhere(
      String plan, double moveOn, double reps) {
    SequentialTest test = PublishedPlans.named(plan);
    for (double beside : new double[] {0, 1e-12, 1e-8}) {
      CourseOfTest course = WaldApproximation.of(test, 1 - new LinesOfTest(test).slope() + beside);

      assertThat(course.moveOn()).isCloseTo(moveOn, within(1e-6));
      assertThat(course.reps()).isCloseTo(reps, within(1e-4));
    }
  }

  /** The exact recursion for the same plans [R]. */
  @ParameterizedTest
  @CsvSource({
    "NIST, .01, .977953, 30.2127", "NIST, .10, .099579, 22.3692",
    "NIST .20, .01, .977778, 21.0964", "NIST .20, .10, .193935, 18.6040",
    "Montgomery, .01, .971418, 63.5835", "Montgomery, .06, .098921, 50.5081",
  })
  void theExactCourseIsRs(String plan, double missed, double moveOn, double reps) {
    CourseOfTest course = ExactCourse.of(PublishedPlans.named(plan), 1 - missed).ofOneTest();

    assertThat(course.moveOn()).isCloseTo(moveOn, OF_CHANCE);
    assertThat(course.reps()).isCloseTo(reps, OF_REPS);
  }

  @Test
  void aDogThatNeverMissesOrAlwaysDoesTakesTheFewestReps() {
    SequentialTest usual = new SequentialTest(0.9, 0.7, 0.1, 0.1);

    assertThat(ExactCourse.of(usual, 1).ofOneTest()).isEqualTo(new CourseOfTest(1, 9));
    assertThat(ExactCourse.of(usual, 0).ofOneTest()).isEqualTo(new CourseOfTest(0, 2));
  }

  /** The rates that were asked for hold for the usual test, as for any [D]. */
  @ParameterizedTest
  @CsvSource({
    ".9, .7, .1, .1",
    ".95, .8, .05, .1",
    ".85, .6, .2, .05",
    ".8, .5, .1, .2",
    ".97, .9, .05, .05",
  })
  void oneTestErrsNoMoreOftenThanItWasTold(
      double mastered, double notYet, double wrongMoveOn, double wrongHold) {
    SequentialTest test = new SequentialTest(mastered, notYet, wrongMoveOn, wrongHold);
    double movedOn = ExactCourse.of(test, notYet).ofOneTest().moveOn();
    double held = 1 - ExactCourse.of(test, mastered).ofOneTest().moveOn();

    // Wald 1945: each is at most its rate over one less the other, their sum at most their sum.
    assertThat(movedOn).isLessThanOrEqualTo(wrongMoveOn / (1 - wrongHold));
    assertThat(held).isLessThanOrEqualTo(wrongHold / (1 - wrongMoveOn));
    assertThat(movedOn + held).isLessThanOrEqualTo(wrongMoveOn + wrongHold);
    assertThat(movedOn).isLessThanOrEqualTo(wrongMoveOn + 0.01);
  }

  /** Restarted at every hold, a test moves nearly everybody on in the end: simulated, seed 20. */
  @Test
  void testAfterTestMovesOnAsOftenAsSimulatedDogs() {
    SequentialTest test = new SequentialTest(0.9, 0.7, 0.1, 0.1);
    SplittableRandom random = new SplittableRandom(20);
    int dogs = 20_000;
    int movedOn = 0;
    for (int dog = 0; dog < dogs; dog++) {
      Evidence evidence = test.begun();
      for (int rep = 0; rep < 60 && evidence.decision() != Decision.MOVE_ON; rep++) {
        evidence = evidence.with(random.nextDouble() < 0.7);
      }
      movedOn += evidence.decision() == Decision.MOVE_ON ? 1 : 0;
    }
    double chance = ExactCourse.of(test, 0.7).moveOnWithin(60);

    assertThat((double) movedOn / dogs).isCloseTo(chance, within(3 * 0.5 / Math.sqrt(dogs)));
    assertThat(ExactCourse.of(test, 0.7).moveOnWithin(8)).isZero();
    assertThat(ExactCourse.of(test, 0.7).moveOnWithin(5_000)).isGreaterThan(0.999);
  }
}
