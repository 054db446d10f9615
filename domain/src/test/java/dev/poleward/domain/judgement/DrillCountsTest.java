package dev.poleward.domain.judgement;

import static dev.poleward.domain.history.Tell.amended;
import static dev.poleward.domain.history.Tell.barePoles;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.tunnelAt;
import static dev.poleward.domain.history.Told.givenTraining;
import static dev.poleward.domain.history.Told.minute;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.RepTelling;
import dev.poleward.domain.history.Told;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.mastery.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** How often each drill was run, and how well. */
class DrillCountsTest {

  private static final Setup JUMP = new Setup(6, 0.6, LeadIn.JUMP, 4.7, null, 0.5, null, null);

  @Test
  void whatStoodAndHowItWasHandledMakeTheDrill() {
    DrillCounts counts =
        counted(
            givenTraining(
                run("r-1", rep -> rep),
                run("r-2", rep -> rep),
                run("r-3", rep -> rep.from(-45)),
                run("r-4", rep -> rep.from(45.5)),
                run("r-5", rep -> rep.over(barePoles(6))),
                run("r-6", rep -> rep.over(tunnelAt(45))),
                run("r-7", rep -> rep.with(Manoeuvre.SEND)),
                run("r-8", rep -> rep.dogSide(DogSide.LEFT)),
                run("r-9", rep -> rep.dogSide(DogSide.RIGHT)),
                run(
                    "r-10",
                    rep ->
                        rep.over(new Setup(4, 0.5, LeadIn.NONE, null, null, null, null, null)))));

    assertThat(counts.drills()).hasSize(8);
    assertThat(counts.drills().getFirst().drill())
        .isEqualTo(
            new DrillRun(
                4, LeadIn.NONE, null, null, new EntryAngle(45), Manoeuvre.ALONGSIDE, null));
    assertThat(counts.drills().getFirst().reps()).isEqualTo(3);
    assertThat(counts.drills())
        .extracting(DrillCount::reps)
        .containsExactly(3, 1, 1, 1, 1, 1, 1, 1);
  }

  @Test
  void aJumpIsTakenStraightUnlessAStepIsSaidAndPolesAloneCountAsNoLeadIn() {
    DrillCounts counts =
        counted(
            givenTraining(
                run("r-1", rep -> rep.over(JUMP)),
                run("r-2", rep -> rep.over(JUMP).backChainStep(BackChainStep.STRAIGHT)),
                run("r-3", rep -> rep.over(JUMP).backChainStep(BackChainStep.POLES_ONLY)),
                run("r-4", rep -> rep.over(barePoles(6))),
                run(
                    "r-5",
                    rep ->
                        rep.over(JUMP).backChainStep(BackChainStep.WRAP).jumpTurn(JumpTurn.LEFT)),
                run("r-6", rep -> rep.over(JUMP).backChainStep(BackChainStep.WRAP))));

    assertThat(counts.drills())
        .extracting(each -> each.drill().leadIn(), each -> each.drill().step(), DrillCount::reps)
        .containsExactly(
            tuple(LeadIn.JUMP, BackChainStep.WRAP, 1),
            tuple(LeadIn.JUMP, BackChainStep.WRAP, 1),
            tuple(LeadIn.NONE, null, 2),
            tuple(LeadIn.JUMP, BackChainStep.STRAIGHT, 2));
    assertThat(counts.drills())
        .extracting(each -> each.drill().turn())
        .containsExactly(null, JumpTurn.LEFT, null, null);
  }

  @Test
  void cleanIsNoFaultAndMadeIsTheEntryWhateverCameAfterIt() {
    DrillCount count =
        only(
            givenTraining(
                run("r-1", rep -> rep),
                run("r-2", rep -> rep.ended(Outcome.POPPED_OUT)),
                run("r-3", rep -> rep.ended(Outcome.BACK_WEAVE)),
                run("r-4", rep -> rep.ended(Outcome.SKIPPED_POLE).atPole(3)),
                run("r-5", rep -> rep.ended(Outcome.SKIPPED_POLE).atPole(1)),
                run("r-6", rep -> rep.ended(Outcome.MISSED_ENTRY)),
                run("r-7", rep -> rep.ended(Outcome.NO_ATTEMPT))));

    assertThat(count.reps()).isEqualTo(7);
    assertThat(count.clean()).isEqualTo(1);
    assertThat(count.made()).isEqualTo(4);
  }

  /** 8 of 10 is 0.4901625 to 0.9433178 by Wilson's formula, worked out by hand [D]. */
  @Test
  void theCleanShareHasItsLimits() {
    List<Happening> reps = runs(8, Outcome.CLEAN, 0);
    reps.addAll(runs(2, Outcome.POPPED_OUT, 8));

    Estimate share = Objects.requireNonNull(only(givenTraining(all(reps))).cleanShare());

    assertThat(share.value()).isEqualTo(0.8);
    assertThat(share.lower()).isCloseTo(0.4901625, within(1e-7));
    assertThat(share.upper()).isCloseTo(0.9433178, within(1e-7));
  }

  @Test
  void recentAreTheLastTenThatCount() {
    List<Happening> reps = runs(5, Outcome.CLEAN, 0);
    reps.addAll(runs(4, Outcome.MISSED_ENTRY, 5));
    reps.addAll(runs(6, Outcome.CLEAN, 9));
    reps.add(run("helped", rep -> rep.help(Help.LURE)));
    reps.add(run("void", rep -> rep.ended(Outcome.VOID)));

    DrillCount count = only(givenTraining(all(reps)));

    assertThat(count.reps()).isEqualTo(15);
    assertThat(count.clean()).isEqualTo(11);
    assertThat(count.recent()).isEqualTo(new DrillCount.Recent(6, 10));
  }

  @Test
  void helpedRepsAreCountedApart() {
    Told told =
        givenTraining(
            run("r-1", rep -> rep.help(Help.LURE)).at(1),
            run("r-2", rep -> rep.help(Help.NONE).ended(Outcome.MISSED_ENTRY)).at(2),
            run("r-3", rep -> rep.help(Help.CUE)).at(3));

    DrillCount count = only(told);
    assertThat(count.reps()).isEqualTo(1);
    assertThat(count.clean()).isZero();
    assertThat(count.made()).isZero();
    assertThat(count.recent()).isEqualTo(new DrillCount.Recent(0, 1));
    assertThat(count.helped()).isEqualTo(2);
    assertThat(count.first()).isEqualTo(minute(1));
    assertThat(count.last()).isEqualTo(minute(3));
  }

  @Test
  void ofADrillThatWasOnlyHelpedNoShareIsKnown() {
    DrillCount count = only(givenTraining(run("r-1", rep -> rep.help(Help.GUIDE))));

    assertThat(count.reps()).isZero();
    assertThat(count.helped()).isEqualTo(1);
    assertThat(count.cleanShare()).isNull();
    assertThat(count.recent()).isEqualTo(new DrillCount.Recent(0, 0));
  }

  @Test
  void voidRepsAndThoseOfNoDrillAreNumbersAlone() {
    DrillCounts counts =
        counted(
            givenTraining(
                rep("r-1", rep -> rep.over(barePoles(4))),
                rep("r-2", rep -> rep.from(45)),
                rep("r-3", rep -> rep.help(Help.LURE)),
                rep("r-4", rep -> rep.ended(Outcome.VOID)),
                run("r-5", rep -> rep.ended(Outcome.VOID))));

    assertThat(counts).isEqualTo(new DrillCounts(List.of(), 3, 2));
  }

  @Test
  void theDrillRunLastComesFirstAndAtOneInstantTheLesser() {
    DrillCounts counts =
        counted(
            givenTraining(
                run("r-1", rep -> rep.from(30)).at(5).as("z"),
                run("r-2", rep -> rep.from(15)).at(5).as("a"),
                run("r-3", rep -> rep.from(60)).at(9),
                run("r-4", rep -> rep.from(75)).at(1)));

    assertThat(counts.drills())
        .extracting(each -> each.drill().angle().degrees())
        .containsExactly(60.0, 15.0, 30.0, 75.0);
  }

  @Test
  void aCorrectedRepIsOfTheDrillItIsCorrectedTo() {
    Told told =
        givenTraining(
            run("r-1", rep -> rep).at(1).recordedAt(100),
            amended("r-1", rep -> rep.from(-30).ended(Outcome.POPPED_OUT)).at(2).recordedAt(200));

    assertThat(only(told).drill().angle()).isEqualTo(new EntryAngle(-30));
    assertThat(only(told).clean()).isZero();
    assertThat(
            DrillCounts.of(told.whenAskedKnownAt(150).placement().ofDog("juniper"))
                .drills()
                .getFirst()
                .drill()
                .angle())
        .isEqualTo(new EntryAngle(45));
  }

  /** A clean rep on four bare poles from 45 degrees, unless said otherwise. */
  private static Happening run(String rep, UnaryOperator<RepTelling> said) {
    return rep(rep, telling -> said.apply(telling.over(barePoles(4)).from(45)));
  }

  private static List<Happening> runs(int times, Outcome outcome, int from) {
    List<Happening> runs = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      runs.add(run("r-" + (from + i), rep -> rep.ended(outcome)));
    }
    return runs;
  }

  private static Happening[] all(List<Happening> happenings) {
    return happenings.toArray(Happening[]::new);
  }

  private static DrillCounts counted(Told told) {
    return DrillCounts.of(told.whenAsked().placement().ofDog("juniper"));
  }

  private static DrillCount only(Told told) {
    List<DrillCount> drills = counted(told).drills();
    assertThat(drills).hasSize(1);
    return drills.getFirst();
  }
}
