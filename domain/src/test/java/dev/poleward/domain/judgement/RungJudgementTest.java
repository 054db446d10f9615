package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.MovingOnRule;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A rep is a letter: the handling, large when clean, small when missed. */
class RungJudgementTest {

  private static final Handling ALONGSIDE = new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT, null);
  private static final Handling REAR_CROSS = new Handling(Manoeuvre.REAR_CROSS, DogSide.LEFT, null);
  private static final Handling SEND = new Handling(Manoeuvre.SEND, null, null);
  private static final List<Handling> LISTED = List.of(ALONGSIDE, REAR_CROSS);

  private static final MovingOnRule SEQUENTIAL = MovingOnRule.USUAL;
  private static final MovingOnRule EIGHT_OF_TEN = new MovingOnRule.KOfN(8, 10, 3, 0.05);
  private static final MovingOnRule RUN_OF_SIX = new MovingOnRule.Run(6, 3, 0.05);
  private static final List<MovingOnRule> RULES = List.of(SEQUENTIAL, EIGHT_OF_TEN, RUN_OF_SIX);

  @Test
  void withoutARepARungIsUntouchedAndEverythingIsMissing() {
    RungJudgement judgement = judged(SEQUENTIAL, "");

    assertThat(judgement.standing()).isEqualTo(RungStanding.UNTOUCHED);
    assertThat(judgement.verdict()).isInstanceOf(Verdict.Undecided.class);
    assertThat(judgement.missing()).isEqualTo(LISTED);
    assertThat(judgement.cleanRepsToDecide()).isEqualTo(9);
    assertThat(judgement.misfits()).isEmpty();
    assertThat(judgement.slip()).isNull();
  }

  @Test
  void nineCleanWithBothHandlingsMoveOn() {
    RungJudgement judgement = judged(SEQUENTIAL, "AAAARAAAA");

    assertThat(judgement.verdict()).isInstanceOf(Verdict.MoveOn.class);
    assertThat(judgement.standing()).isEqualTo(RungStanding.SOLID);
    assertThat(judgement.cleanRepsToDecide()).isZero();
    assertThat(judgement.verdict().evidence().clean()).isEqualTo(9);
  }

  @Test
  void aHandlingThatWasNeverCleanKeepsTheDogHere() {
    RungJudgement judgement = judged(SEQUENTIAL, "AAAAAAAAAAAA");

    assertThat(judgement.verdict()).isInstanceOf(Verdict.Undecided.class);
    assertThat(judgement.missing()).containsExactly(REAR_CROSS);
    assertThat(judgement.cleanRepsToDecide()).isEqualTo(1);
    assertThat(judged(SEQUENTIAL, "AAAAAAAAAAAAr").missing()).containsExactly(REAR_CROSS);
    assertThat(judged(SEQUENTIAL, "AAAAAAAAAAAAR").verdict()).isInstanceOf(Verdict.MoveOn.class);
    assertThat(judged(SEQUENTIAL, "AAAAAAAAAAAArRAAAA").verdict())
        .isInstanceOf(Verdict.MoveOn.class);
  }

  @Test
  void atTheLowerBoundaryTheDogIsHeldAndTheNextRepStartsAnew() {
    assertThat(judged(SEQUENTIAL, "aa").verdict()).isInstanceOf(Verdict.Hold.class);
    assertThat(judged(SEQUENTIAL, "aaA").verdict()).isInstanceOf(Verdict.Undecided.class);
    assertThat(judged(SEQUENTIAL, "aaARAAAAAAA").verdict()).isInstanceOf(Verdict.MoveOn.class);
  }

  @Test
  void threeMissesInARowStepBackWhateverTheTestSays() {
    for (MovingOnRule rule : RULES) {
      assertThat(judged(rule, "ARAaaa").verdict())
          .isInstanceOfSatisfying(
              Verdict.StepBack.class, it -> assertThat(it.missesInARow()).isEqualTo(3));
      assertThat(judged(rule, "ARAaaaa").verdict()).isInstanceOf(Verdict.StepBack.class);
    }
  }

  @Test
  void afterSteppingBackTheDogIsTestedAnew() {
    RungJudgement judgement = judged(SEQUENTIAL, "ARAAAAAaaaA");

    assertThat(judgement.verdict()).isInstanceOf(Verdict.Undecided.class);
    assertThat(judgement.verdict().evidence()).isEqualTo(testOf(SEQUENTIAL).begun().with(true));
    assertThat(judged(SEQUENTIAL, "ARAAAAAaaa").cleanRepsToDecide()).isEqualTo(9);
  }

  /** Until every handling was clean the test goes on: misses count, clean reps save up nothing. */
  @Test
  void whileAHandlingIsMissingMissesStillCount() {
    RungJudgement waiting = judged(SEQUENTIAL, "AAAAAAAAAAAAAAA" + "rArA");

    assertThat(waiting.verdict().evidence().clean()).isEqualTo(17);
    assertThat(waiting.verdict().evidence().missed()).isEqualTo(2);
    assertThat(waiting.verdict().evidence().decision()).isEqualTo(Decision.UNDECIDED);
    assertThat(waiting.cleanRepsToDecide()).isEqualTo(7);
    assertThat(judged(SEQUENTIAL, "AAAAAAAAAAAAAAA" + "rArAR").standing())
        .isEqualTo(RungStanding.LEARNING);
  }

  @Test
  void oneCleanRepWithAHandlingThatIsMissedNineTimesOfTenMovesNobodyOn() {
    for (MovingOnRule rule : RULES) {
      RungJudgement judgement = judged(rule, "AAAAAAAAAA" + "rArArArArArArArArA" + "R");

      assertThat(judgement.missing()).isEmpty();
      assertThat(judgement.standing()).isEqualTo(RungStanding.LEARNING);
      assertThat(judgement.verdict()).isNotInstanceOf(Verdict.MoveOn.class);
      assertThat(judgement.misfits()).extracting(Misfit::handling).containsExactly(REAR_CROSS);
    }
  }

  /** Waiting for the missing handling is no leave to fail at it. */
  @Test
  void threeMissesInARowWithTheMissingHandlingUndoWhatTheTestHasSaid() {
    assertThat(judged(SEQUENTIAL, "AAAAAAAAArrr").verdict()).isInstanceOf(Verdict.StepBack.class);
    assertThat(judged(SEQUENTIAL, "AAAAAAAAArrrR").verdict()).isInstanceOf(Verdict.Undecided.class);
  }

  @Test
  void repsWithOtherHandlingsAreNotLookedAt() {
    assertThat(judged(SEQUENTIAL, "SAAAsAARsAAssAASS")).isEqualTo(judged(SEQUENTIAL, "AAAAARAAAA"));
    assertThat(judged(SEQUENTIAL, "sSs").standing()).isEqualTo(RungStanding.UNTOUCHED);
  }

  @Test
  void whatWasSolidSlipsSinceTheFirstOfTheMisses() {
    String solid = "AAAARAAAA" + "AAAAAAAAAAAA";
    RungJudgement judgement = judged(SEQUENTIAL, solid + "SaRaraaA");

    assertThat(judgement.standing()).isEqualTo(RungStanding.SLIPPING);
    assertThat(judgement.slip()).isEqualTo(new Slip(solid.length() + 1, solid.length() + 6));
    assertThat(judgement.verdict()).isInstanceOf(Verdict.Undecided.class);
    assertThat(judged(SEQUENTIAL, solid + "aRa").standing()).isEqualTo(RungStanding.SOLID);
  }

  @Test
  void aSlipWithManyMissesInARowStepsBack() {
    assertThat(judged(SEQUENTIAL, "AAAARAAAAaaaaa").verdict()).isInstanceOf(Verdict.StepBack.class);
  }

  @Test
  void aSlipIsMadeGoodByThePassingOfTheSameTest() {
    RungJudgement judgement = judged(SEQUENTIAL, "AAAARAAAAaaaaa" + "AAAAAAAAA");

    assertThat(judgement.standing()).isEqualTo(RungStanding.SOLID);
    assertThat(judgement.slip()).isNull();
  }

  /** Seeds 0 to 1,999: whatever came before, a clean rep never lowers the verdict. */
  @Test
  void oneMoreCleanRepNeverMovesAVerdictDown() {
    for (int seed = 0; seed < 2_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      MovingOnRule rule = RULES.get(seed % RULES.size());
      String reps = any(random, random.nextInt(40), random.nextDouble(0.2, 1));
      RungJudgement before = judged(rule, reps);
      RungJudgement after = judged(rule, reps + "A");

      assertThat(after.verdict().rank())
          .as("seed %d: %s", seed, reps)
          .isGreaterThanOrEqualTo(before.verdict().rank());
      if (before.standing() != RungStanding.SLIPPING) {
        assertThat(after.standing()).as("seed %d", seed).isNotEqualTo(RungStanding.SLIPPING);
      }
    }
  }

  /** Seeds 0 to 1,999: two neighbours that say the same may change places. */
  @Test
  void theOrderOfEqualEvidenceDoesNotShow() {
    for (int seed = 0; seed < 2_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      MovingOnRule rule = RULES.get(seed % RULES.size());
      String before = any(random, random.nextInt(30), 0.7);
      String after = any(random, 1 + random.nextInt(10), 0.7);
      String pair = random.nextBoolean() ? "AR" : "ar";
      RungJudgement one = judged(rule, before + pair + after);
      RungJudgement other = judged(rule, before + new StringBuilder(pair).reverse() + after);

      assertThat(other.verdict()).as("seed %d", seed).isEqualTo(one.verdict());
      assertThat(other.standing()).as("seed %d", seed).isEqualTo(one.standing());
      assertThat(other.missing()).as("seed %d", seed).isEqualTo(one.missing());
      assertThat(other.slip()).as("seed %d", seed).isEqualTo(one.slip());
    }
  }

  /** Seeds 0 to 999: that many clean reps, the missing handlings first, and not one less. */
  @Test
  void soManyMoreCleanRepsMoveOnAndNoFewer() {
    for (int seed = 0; seed < 1_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      MovingOnRule rule = RULES.get(seed % RULES.size());
      StringBuilder reps = new StringBuilder(any(random, random.nextInt(30), 0.6));
      RungJudgement judgement = judged(rule, reps.toString());
      List<Handling> missing = new ArrayList<>(judgement.missing());
      for (int left = judgement.cleanRepsToDecide(); left > 0; left--) {
        assertThat(judged(rule, reps.toString()).verdict())
            .as("seed %d: %s", seed, reps)
            .isNotInstanceOf(Verdict.MoveOn.class);
        reps.append(missing.isEmpty() || missing.removeFirst().equals(ALONGSIDE) ? 'A' : 'R');
      }

      assertThat(judged(rule, reps.toString()).verdict())
          .as("seed %d: %s", seed, reps)
          .isInstanceOf(Verdict.MoveOn.class);
    }
  }

  /** Seed 5: of tries by dogs that are not there yet, one test moves no more on than was asked. */
  @Test
  void oneTestMovesNoMoreDogsOnThanWasAsked() {
    SplittableRandom random = new SplittableRandom(5);
    int dogs = 4_000;
    int movedOn = 0;
    for (int dog = 0; dog < dogs; dog++) {
      StringBuilder reps = new StringBuilder();
      Verdict verdict = judged(SEQUENTIAL, "").verdict();
      while (verdict instanceof Verdict.Undecided) {
        reps.append(any(random, 1, 0.7));
        verdict = judged(SEQUENTIAL, reps.toString()).verdict();
      }
      movedOn += verdict instanceof Verdict.MoveOn ? 1 : 0;
    }

    assertThat((double) movedOn / dogs).isLessThanOrEqualTo(0.11);
  }

  private static MovingOnTest testOf(MovingOnRule rule) {
    return MovingOnTest.of(rule);
  }

  private static RungJudgement judged(MovingOnRule rule, String reps) {
    return RungJudgement.of(LISTED, rule, SlipWatch.USUAL, handled(reps));
  }

  private static List<HandledRep> handled(String reps) {
    return reps.chars()
        .mapToObj(
            rep ->
                new HandledRep(
                    switch (Character.toUpperCase(rep)) {
                      case 'A' -> ALONGSIDE;
                      case 'R' -> REAR_CROSS;
                      default -> SEND;
                    },
                    Character.isUpperCase(rep)))
        .toList();
  }

  private static String any(SplittableRandom random, int reps, double share) {
    StringBuilder any = new StringBuilder();
    for (int rep = 0; rep < reps; rep++) {
      boolean clean = random.nextDouble() < share;
      char letter = random.nextBoolean() ? 'a' : 'r';
      any.append(clean ? Character.toUpperCase(letter) : letter);
    }
    return any.toString();
  }
}
