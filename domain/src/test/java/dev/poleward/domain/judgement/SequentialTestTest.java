package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SequentialTestTest {

  private static final SequentialTest USUAL = new SequentialTest(0.9, 0.7, 0.1, 0.1);

  /**
   * NIST/SEMATECH e-Handbook 6.2.6: parameters [T], lines −.939 + .0397n and 1.205 + .0397n [M];
   * Montgomery, lines −1.22 + .028n and 1.57 + .028n [M]; further digits and the plan at .20 [R].
   */
  @ParameterizedTest
  @CsvSource({
    "NIST, .9388616, 1.2053787, .03974743",
    "NIST .20, .6497968, 1.1562593, .03974743",
    "Montgomery, 1.2211492, 1.5678000, .02811103",
  })
  void theLinesAreThePublishedOnes(String plan, double below, double above, double slope) {
    LinesOfTest lines = new LinesOfTest(PublishedPlans.named(plan));

    assertThat(lines.below()).isCloseTo(below, within(1e-7));
    assertThat(lines.above()).isCloseTo(above, within(1e-7));
    assertThat(lines.slope()).isCloseTo(slope, within(0.51e-8));
  }

  /** The boundaries as logs [R]. */
  @Test
  void theBoundariesAreThoseOfTheErrorRates() {
    assertThat(PublishedPlans.NIST.lowerBoundary()).isCloseTo(-2.890372, within(0.51e-6));
    assertThat(PublishedPlans.NIST.upperBoundary()).isCloseTo(2.251292, within(0.51e-6));
    assertThat(PublishedPlans.NIST_AT_20_PERCENT.lowerBoundary())
        .isCloseTo(-2.772589, within(0.51e-6));
    assertThat(PublishedPlans.NIST_AT_20_PERCENT.upperBoundary())
        .isCloseTo(1.558145, within(0.51e-6));
  }

  /** NIST 6.2.6, by the package that prints its table [T]; the others [R]. */
  @ParameterizedTest
  @CsvSource({
    "NIST, 0, 24",
    "NIST, 1, 49",
    "NIST, 2, 74",
    "NIST, 3, 100",
    "NIST .20, 0, 17",
    "Montgomery, 0, 44",
  })
  void soManyMissesMoveOnFirstAtThatRep(String plan, int missed, int reps) {
    SequentialTest test = PublishedPlans.named(plan);

    assertThat(test.at(test.balance(reps - 1 - missed, missed))).isNotEqualTo(Decision.MOVE_ON);
    assertThat(test.at(test.balance(reps - missed, missed))).isEqualTo(Decision.MOVE_ON);
  }

  /**
   * NIST 6.2.6, by the package that prints its table [T]: 2 from the second rep on, 4, 5 and 6
   * first needed at 46, 71 and 96. Where 3 begins, at 20, rounded and unrounded lines disagree.
   */
  @ParameterizedTest
  @CsvSource({"2, 2, 19", "3, 21, 45", "4, 46, 70", "5, 71, 95", "6, 96, 100"})
  void soManyMissesHoldFromThatRepToThat(int missed, int from, int to) {
    SequentialTest test = PublishedPlans.NIST;

    for (int reps = from; reps <= to; reps++) {
      assertThat(test.at(test.balance(reps - missed, missed))).isEqualTo(Decision.HOLD);
      assertThat(test.at(test.balance(reps - missed + 1, missed - 1))).isNotEqualTo(Decision.HOLD);
    }
  }

  /** With 0.9 against 0.7 at 10%, a miss is exactly half the way to the lower boundary [D]. */
  @Test
  void twoMissesReachTheLowerBoundaryWhateverRoundingSays() {
    assertThat(after(USUAL, false).decision()).isEqualTo(Decision.UNDECIDED);
    assertThat(after(USUAL, false, false).decision()).isEqualTo(Decision.HOLD);
  }

  /** ln 9 / ln (9/7) = 8.74 [D]. */
  @Test
  void nineCleanFromTheStartMoveOn() {
    Evidence evidence = USUAL.begun();
    for (int left = 9; left > 0; left--) {
      assertThat(evidence.cleanRepsToDecide()).isEqualTo(left);
      assertThat(evidence.decision()).isEqualTo(Decision.UNDECIDED);
      evidence = evidence.with(true);
    }
    assertThat(evidence.decision()).isEqualTo(Decision.MOVE_ON);
    assertThat(evidence.cleanRepsToDecide()).isZero();
  }

  @Test
  void afterAHoldTheEvidenceStartsAnewWithTheNextRep() {
    Evidence held = after(USUAL, true, false, false, false);
    assertThat(held.decision()).isEqualTo(Decision.HOLD);
    assertThat(held.cleanRepsToDecide()).isEqualTo(9);

    Evidence anew = held.with(true);
    assertThat(anew).isEqualTo(after(USUAL, true));
    assertThat(anew.decision()).isEqualTo(Decision.UNDECIDED);
    assertThat(held.with(false)).isEqualTo(after(USUAL, false));
  }

  /** A miss weighs ln 3, a clean rep ln(9/7): from ln 9 and a bit it takes five to be back [D]. */
  @Test
  void whereItGoesOnAtTheUpperBoundaryAMissLeadsBelowHoweverManyWereClean() {
    for (int clean : new int[] {9, 10, 40}) {
      Evidence passed = after(USUAL, IntStream.range(0, clean).mapToObj(i -> true).toArray());
      Evidence missed = passed.with(false);

      assertThat(passed.decision()).isEqualTo(Decision.MOVE_ON);
      assertThat(passed.clean()).isEqualTo(clean);
      assertThat(missed.decision()).isEqualTo(Decision.UNDECIDED);
      assertThat(missed.missed()).isEqualTo(1);
      assertThat(missed.cleanRepsToDecide()).isEqualTo(5);
      assertThat(missed.with(false).with(false).with(false).with(false).decision())
          .isEqualTo(Decision.HOLD);
    }
  }

  /** Seeds 0 to 499: so no more dogs are moved on by going on than by the test that stops. */
  @Test
  void whereItGoesOnItMovesOnOnlyAfterTheTestThatStopsHasDone() {
    int fellBelow = 0;
    for (int seed = 0; seed < 500; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Evidence goingOn = USUAL.begun();
      double stopping = 0;
      boolean stopped = false;
      for (int rep = 0; rep < 60; rep++) {
        if (goingOn.decision() == Decision.HOLD) {
          stopping = 0;
          stopped = false;
        }
        boolean clean = random.nextDouble() < 0.8;
        goingOn = goingOn.with(clean);
        if (!stopped) {
          stopping += clean ? Math.log(0.9 / 0.7) : Math.log(0.1 / 0.3);
          stopped = stopping >= Math.log(9);
        }

        assertThat(goingOn.decision() != Decision.MOVE_ON || stopped)
            .as("seed %d, rep %d", seed, rep)
            .isTrue();
        fellBelow += stopped && goingOn.decision() != Decision.MOVE_ON ? 1 : 0;
      }
    }
    assertThat(fellBelow).isPositive();
  }

  private static Evidence after(SequentialTest test, Object... reps) {
    Evidence evidence = test.begun();
    for (Object clean : reps) {
      evidence = evidence.with((Boolean) clean);
    }
    return evidence;
  }

  @Test
  void whatIsNoTestIsRefused() {
    assertThatThrownBy(() -> new SequentialTest(0.7, 0.9, 0.1, 0.1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SequentialTest(1, 0.9, 0.1, 0.1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SequentialTest(0.9, 0.7, 0, 0.1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SequentialTest(0.9, 0.7, 0.1, 0.5))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
