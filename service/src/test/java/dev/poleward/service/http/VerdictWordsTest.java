package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.judgement.DrillCount;
import dev.poleward.domain.judgement.DrillStanding;
import dev.poleward.domain.judgement.DrillState;
import dev.poleward.domain.judgement.HandledRep;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.SlipWatch;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.MovingOnRule;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What is said of a rung with two handlings: alongside with the dog on the left (L) and on the
 * right (R), small letters for misses.
 */
class VerdictWordsTest {

  private static final Stage STAGE = DefaultProgramme.programme().stage("four-jump").orElseThrow();
  private static final RungPool POOL = STAGE.pools().getFirst();
  private static final List<Handling> LISTED = RungJudgement.handlingsOf(POOL);

  private static final MovingOnRule FIVE_OF_SIX = new MovingOnRule.KOfN(5, 6, 3, 0.05);
  private static final MovingOnRule RUN_OF_THREE = new MovingOnRule.Run(3, 3, 0.05);

  @Test
  void aHoldOfTheSequentialTestBeginsAnew() {
    assertThat(said(MovingOnRule.USUAL, "LlRrl"))
        .isEqualTo(
            "Not there yet: 3 of 5 reps of the test were missed. It begins anew with the next rep.");
  }

  @Test
  void aWindowDoesNotBeginAnew() {
    assertThat(said(FIVE_OF_SIX, "LrLrLrLr"))
        .isEqualTo(
            "Not there yet: of the last 6 reps 3 were missed; 5 of the last 6 have to be clean."
                + " Lags behind the rest: alongside with the dog on the right (0 of 4 clean, the rest"
                + " 4 of 4).");
  }

  @Test
  void oneRepIsSingular() {
    assertThat(said(new MovingOnRule.KOfN(3, 3, 3, 0.05), "l"))
        .startsWith("Not there yet: the last rep was missed; 3 of the last 3 have to be clean.");
    assertThat(said(new MovingOnRule.KOfN(3, 3, 3, 0.05), "lL"))
        .startsWith("Not there yet: of the last 2 reps 1 was missed; 3 of the last 3");
  }

  @Test
  void aRunBeginsAnewAtTheMiss() {
    assertThat(said(RUN_OF_THREE, "LRl"))
        .isEqualTo("Not there yet: the last rep was missed, and the run of 3 begins anew.");
  }

  @Test
  void aTestThatIsThroughWaitsForTheHandlingsThatAreMissing() {
    assertThat(said(MovingOnRule.USUAL, "LLLLLLLLLL"))
        .isEqualTo(
            "The test is through, with 10 of 10 clean; still to be clean: alongside with the dog on"
                + " the right.");
  }

  @Test
  void untilThenTheMissingHandlingsAreAmongThoseThatWouldDecide() {
    assertThat(said(MovingOnRule.USUAL, "LLLL"))
        .isEqualTo(
            "4 of 4 clean so far; 5 more clean reps would decide, if these are among them: alongside"
                + " with the dog on the right.");
    assertThat(said(MovingOnRule.USUAL, "LLLLLLLL"))
        .isEqualTo(
            "8 of 8 clean so far; 1 more clean rep would decide: alongside with the dog on the"
                + " right.");
    assertThat(said(MovingOnRule.USUAL, "LRLR"))
        .isEqualTo("4 of 4 clean so far; 5 more clean reps would decide.");
  }

  @Test
  void whatIsPassedWhileAHandlingLagsIsNotCalledMastered() {
    assertThat(said(MovingOnRule.USUAL, "LLLLRLLLL"))
        .isEqualTo(
            "Mastered: 9 of 9 reps of the test were clean, and every handling at least once.");
    assertThat(said(new MovingOnRule.Run(9, 3, 0.05), "rLrLrLrLrLrLRLLLLLLLL"))
        .isEqualTo(
            "Passed as a whole: 9 of 9 reps of the test were clean, and every handling"
                + " at least once. Lags behind the rest: alongside with the dog on the right (1 of 7"
                + " clean, the rest 14 of 14).");
  }

  @Test
  void bothTurnsOfAWrapAreNamedWhereTheVerdictIsAboutBoth() {
    RungPool wraps =
        STAGE.pools().stream()
            .filter(pool -> pool.step() == BackChainStep.WRAP)
            .findFirst()
            .orElseThrow();

    assertThat(
            VerdictWords.reason(
                new NextRung(
                    standing(wraps, MovingOnRule.USUAL, List.of(), List.of()),
                    NextRung.Reason.DUE,
                    0.9)))
        .isEqualTo(
            "4 poles after a wrap round the jump to the left and to the right, straight on: solid, but"
                + " not practised for long; refresh it with a few easy reps.");
  }

  @Test
  void whereTheTestBeginsAnewTheRepsBeforeAreNotDenied() {
    DrillStanding ran =
        new DrillStanding(
            new DrillOfStage(STAGE.id(), POOL.drills().getFirst()),
            DrillState.LEARNING,
            4,
            4,
            new DrillCount.Recent(4, 4),
            0,
            Instant.parse("2026-05-04T17:02:11Z"));

    assertThat(VerdictWords.reason(standing(POOL, MovingOnRule.USUAL, List.of(), List.of(ran))))
        .isEqualTo(
            "The test begins anew under this version of the programme, after 4 reps under what was"
                + " followed before: 9 more clean reps would decide.");
    assertThat(VerdictWords.reason(standing(POOL, MovingOnRule.USUAL, List.of(), List.of())))
        .isEqualTo("No rep of the test yet: 9 more clean reps would decide.");
  }

  private static String said(MovingOnRule rule, String reps) {
    List<HandledRep> handled =
        reps.chars()
            .mapToObj(
                rep ->
                    new HandledRep(
                        LISTED.get(Character.toUpperCase(rep) == 'L' ? 0 : 1),
                        Character.isUpperCase(rep)))
            .toList();
    return VerdictWords.reason(standing(POOL, rule, handled, List.of()));
  }

  private static PoolStanding standing(
      RungPool pool, MovingOnRule rule, List<HandledRep> reps, List<DrillStanding> drills) {
    return new PoolStanding(
        STAGE,
        pool,
        DrillState.LEARNING,
        RungJudgement.of(RungJudgement.handlingsOf(pool), rule, SlipWatch.USUAL, reps),
        drills,
        false,
        null,
        null,
        null,
        null);
  }
}
