package dev.poleward.domain.programme;

import static dev.poleward.domain.programme.LaidOut.run;
import static dev.poleward.domain.programme.LaidOut.runOf;
import static dev.poleward.domain.programme.LaidOut.setup;
import static dev.poleward.domain.programme.Written.programmeOf;
import static dev.poleward.domain.programme.Written.sound;
import static dev.poleward.domain.programme.Written.stage;
import static dev.poleward.domain.programme.Written.stageWith;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.history.Tell;
import dev.poleward.domain.history.Told;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.DrillMatch.Counts;
import dev.poleward.domain.programme.DrillMatch.Helped;
import dev.poleward.domain.programme.DrillMatch.Misfit;
import dev.poleward.domain.programme.DrillMatch.NoDrill;
import dev.poleward.domain.programme.DrillMatch.Voided;
import dev.poleward.domain.record.PlacedRep;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Which drill a rep belongs to. */
class DrillMatchingTest {

  private static final String TUNNEL =
      stageWith(
          "tunnel",
          "tunnel",
          "{'rungs':{'end':90,'stepDegrees':15}}",
          "[{'manoeuvre':'alongside','dogSide':'left'},{'manoeuvre':'send'},"
              + "{'manoeuvre':'recall','untilAngle':45}]");
  private static final String BARE =
      stageWith("bare", "none", "{'clocks':['12:00','1:30']}", "[{'manoeuvre':'alongside'}]");
  private static final String JUMP =
      stageWith(
          "jump",
          "jump",
          "{'clocks':['12:00','1:30']}",
          "[{'manoeuvre':'alongside'}]",
          "'backChainSteps':['poles-only','wrap','straight']");

  private final Programme programme = sound(programmeOf("", TUNNEL, BARE, JUMP));
  private final DrillMatching matching = DrillMatching.of(programme);

  private static PlacedRep sentThroughTheTunnel(double degrees) {
    return run(setup(4, LeadIn.TUNNEL, degrees), rep -> rep.with(Manoeuvre.SEND));
  }

  private List<Double> anglesOf(PlacedRep rep) {
    return switch (matching.match(rep)) {
      case Counts(List<DrillOfStage> drills) ->
          drills.stream().map(each -> each.drill().rung().angle().degrees()).toList();
      case Helped _, Voided _, NoDrill _ -> List.of();
    };
  }

  private List<String> stagesOf(PlacedRep rep) {
    return switch (matching.match(rep)) {
      case Counts(List<DrillOfStage> drills) ->
          drills.stream().map(each -> each.stage() + " " + each.drill().runUp().step()).toList();
      case Helped _, Voided _, NoDrill _ -> List.of();
    };
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "4.9, 0",
    "-4.9, 0",
    "10, 15",
    "15, 15",
    "20, 15",
    "-25, -30",
    "92, 90",
    "-95, -90"
  })
  void aRepBelongsToTheNearestRungWithinTheTolerance(double run, double rung) {
    assertThat(anglesOf(sentThroughTheTunnel(run))).containsExactly(rung);
  }

  @ParameterizedTest
  @CsvSource({"7.5", "-8", "96", "-170"})
  void aRepFarFromEveryRungBelongsToNone(double run) {
    assertThat(matching.match(sentThroughTheTunnel(run))).isEqualTo(new NoDrill(Misfit.ANGLE));
  }

  @Test
  void ofTwoRungsAsNearTheSmallerAngleWins() {
    String rungs = "{'rungs':{'start':10,'end':30,'stepDegrees':2}}";
    String handling = "[{'manoeuvre':'send'}]";
    DrillMatching fine =
        DrillMatching.of(sound(programmeOf("", stageWith("s", "tunnel", rungs, handling))));

    assertThat(fine.match(sentThroughTheTunnel(-21)))
        .isEqualTo(fine.match(sentThroughTheTunnel(-20.5)))
        .isNotEqualTo(fine.match(sentThroughTheTunnel(-21.5)));
  }

  /** Within the tolerance of the first rung, but on the other side of the line. */
  @Test
  void aRepNeverBelongsToARungOnTheOtherSide() {
    String rungs = "{'rungs':{'start':2,'end':2,'stepDegrees':2,'sides':'pole'}}";
    DrillMatching one =
        DrillMatching.of(
            sound(programmeOf("", stageWith("s", "tunnel", rungs, "[{'manoeuvre':'send'}]"))));

    assertThat(one.match(sentThroughTheTunnel(1))).isInstanceOf(Counts.class);
    assertThat(one.match(sentThroughTheTunnel(-1))).isEqualTo(new NoDrill(Misfit.ANGLE));
    assertThat(one.match(sentThroughTheTunnel(0))).isEqualTo(new NoDrill(Misfit.ANGLE));
  }

  @Test
  void whereAHandlingIsNotAskedForAnyMoreTheLastRungOfItMayBeNear() {
    assertThat(anglesOf(run(setup(4, LeadIn.TUNNEL, 49), rep -> rep.with(Manoeuvre.RECALL))))
        .containsExactly(45.0);
    assertThat(matching.match(run(setup(4, LeadIn.TUNNEL, 60), rep -> rep.with(Manoeuvre.RECALL))))
        .isEqualTo(new NoDrill(Misfit.ANGLE));
  }

  /** With a wide tolerance the nearest rung is 60° for all, and asks for no recall. */
  @Test
  void theNearestRungWinsWhateverTheHandling() {
    DrillMatching wide =
        DrillMatching.of(sound(programmeOf("'toleranceDegrees':10", TUNNEL, BARE, JUMP)));

    assertThat(wide.match(sentThroughTheTunnel(54)))
        .isEqualTo(wide.match(sentThroughTheTunnel(60)));
    assertThat(wide.match(run(setup(4, LeadIn.TUNNEL, 54), rep -> rep.with(Manoeuvre.RECALL))))
        .isEqualTo(new NoDrill(Misfit.ANGLE));
    assertThat(wide.match(run(setup(4, LeadIn.TUNNEL, 52.5), rep -> rep.with(Manoeuvre.RECALL))))
        .isEqualTo(wide.match(run(setup(4, LeadIn.TUNNEL, 45), rep -> rep.with(Manoeuvre.RECALL))))
        .isInstanceOf(Counts.class);
  }

  @Test
  void theDogSideIsPartOfTheHandlingWhereTheStageSaysOne() {
    assertThat(anglesOf(run(setup(4, LeadIn.TUNNEL, 30), rep -> rep.dogSide(DogSide.LEFT))))
        .containsExactly(30.0);
    assertThat(matching.match(run(setup(4, LeadIn.TUNNEL, 30), rep -> rep.dogSide(DogSide.RIGHT))))
        .isEqualTo(new NoDrill(Misfit.HANDLING));
    assertThat(matching.match(run(setup(4, LeadIn.TUNNEL, 30), rep -> rep)))
        .isEqualTo(new NoDrill(Misfit.HANDLING));
    assertThat(
            anglesOf(
                run(
                    setup(4, LeadIn.TUNNEL, 30),
                    rep -> rep.with(Manoeuvre.SEND).dogSide(DogSide.RIGHT))))
        .containsExactly(30.0);
  }

  @Test
  void theDirectionOfTheRepBeatsThatOfTheSetup() {
    assertThat(anglesOf(run(setup(4, LeadIn.NONE, 0), rep -> rep.from("1:30"))))
        .contains(45.0)
        .doesNotContain(0.0);
  }

  /** Poles alone, from where the jump will be, count as no lead-in: both ways. */
  @Test
  void polesAloneAreTheSameWithAJumpToComeAndWithout() {
    assertThat(stagesOf(run(setup(4, LeadIn.NONE, 45), rep -> rep)))
        .containsExactly("bare null", "jump POLES_ONLY");
    assertThat(
            stagesOf(
                run(setup(4, LeadIn.JUMP, 45), rep -> rep.backChainStep(BackChainStep.POLES_ONLY))))
        .containsExactly("bare null", "jump POLES_ONLY");
  }

  @Test
  void aJumpIsTakenStraightUnlessSomethingElseIsSaid() {
    assertThat(stagesOf(run(setup(4, LeadIn.JUMP, 0), rep -> rep)))
        .containsExactly("jump STRAIGHT");
    assertThat(
            stagesOf(
                run(
                    setup(4, LeadIn.JUMP, 0),
                    rep -> rep.backChainStep(BackChainStep.WRAP).jumpTurn(JumpTurn.LEFT))))
        .containsExactly("jump WRAP");
    assertThat(
            matching.match(
                run(setup(4, LeadIn.JUMP, 0), rep -> rep.backChainStep(BackChainStep.WRAP))))
        .isEqualTo(new NoDrill(Misfit.RUN_UP));
  }

  @Test
  void aRepThatFitsNoDrillSaysHowNearItCame() {
    assertThat(matching.match(run(setup(6, LeadIn.TUNNEL, 0), rep -> rep)))
        .isEqualTo(new NoDrill(Misfit.POLES));
    assertThat(matching.match(run(setup(4, LeadIn.NONE, 0), rep -> rep.with(Manoeuvre.PRESSURE))))
        .isEqualTo(new NoDrill(Misfit.HANDLING));
    assertThat(matching.match(run(Tell.barePoles(4), rep -> rep)))
        .isEqualTo(new NoDrill(Misfit.NO_ANGLE));
    assertThat(matching.match(Told.givenTraining(Tell.rep("r-1")).whenAsked().rep("r-1")))
        .isEqualTo(new NoDrill(Misfit.NO_SETUP));
  }

  @ParameterizedTest
  @EnumSource(
      value = Help.class,
      names = {"LURE", "GUIDE", "CUE"})
  void aHelpedRepIsPracticeAndNoEvidence(Help help) {
    PlacedRep helped = run(setup(4, LeadIn.JUMP, 0), rep -> rep.help(help));

    assertThat(matching.match(helped))
        .isInstanceOfSatisfying(Helped.class, match -> assertThat(match.drills()).hasSize(1));
  }

  @Test
  void helpThatWasNoneIsNoHelp() {
    assertThat(matching.match(run(setup(4, LeadIn.JUMP, 0), rep -> rep.help(Help.NONE))))
        .isInstanceOf(Counts.class);
  }

  @Test
  void aMissIsEvidenceAndAVoidRepIsNot() {
    assertThat(
            matching.match(run(setup(4, LeadIn.JUMP, 0), rep -> rep.ended(Outcome.MISSED_ENTRY))))
        .isInstanceOf(Counts.class);
    assertThat(matching.match(run(setup(4, LeadIn.JUMP, 0), rep -> rep.ended(Outcome.VOID))))
        .isEqualTo(new Voided());
  }

  @Test
  void aRepCountsInEachStageThatAsksForIt() {
    DrillMatching twice = DrillMatching.of(sound(programmeOf("", stage("first"), stage("again"))));

    assertThat(twice.match(run(setup(4, LeadIn.NONE, 0), rep -> rep)))
        .isInstanceOfSatisfying(
            Counts.class,
            match ->
                assertThat(match.drills())
                    .extracting(DrillOfStage::stage)
                    .containsExactly("first", "again"));
  }

  /** Whatever the programme: the drill itself, and a little beside none that is further off. */
  @Test
  void everyDrillIsMatchedByTheRepLaidOutForIt() {
    for (long seed = 1; seed <= 60; seed++) {
      Programme made = new ProgrammeMaker(new SplittableRandom(seed)).programme();
      DrillMatching drills = DrillMatching.of(made);
      for (DrillOfStage each : made.drills()) {
        assertThat(drills.match(runOf(each.drill(), 0)))
            .as("seed %d, %s", seed, each)
            .isInstanceOfSatisfying(
                Counts.class, match -> assertThat(match.drills()).contains(each));
        PlacedRep beside = runOf(each.drill(), each.drill().rung().size() > 1 ? 0.1 : 0);
        assertThat(drills.match(beside))
            .as("seed %d, beside %s", seed, each)
            .isInstanceOfSatisfying(
                Counts.class, match -> assertThat(match.drills()).anyMatch(isAsNear(each)));
      }
    }
  }

  private static Predicate<DrillOfStage> isAsNear(DrillOfStage wanted) {
    Drill drill = wanted.drill();
    return found ->
        found.stage().equals(wanted.stage())
            && found.drill().runUp().equals(drill.runUp())
            && found.drill().handling().equals(drill.handling())
            && found.drill().rung().side() == drill.rung().side()
            && Math.abs(found.drill().rung().size() - drill.rung().size()) <= 0.2;
  }
}
