package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.judgement.Ran;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RewardLadder;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A new side or angle starts with more rewards again [C]. */
class RewardStepsTest {

  private static final Programme PROGRAMME = DefaultProgramme.programme();
  private static final String STAGE = "four-bare";
  private static final Instant BEGUN = Instant.parse("2026-03-02T18:00:00Z");
  private static final List<Reward> LEANEST = RewardLadder.USUAL.steps().getLast().rewards();
  private static final int LEAN = RewardLadder.USUAL.steps().size() - 1;
  private static final RunUp BARE = RunUp.over(LeadIn.NONE);

  private final List<PlacedRep> reps = new ArrayList<>();

  private static Drill drill(int poles, RunUp runUp, double degrees) {
    return new Drill(
        poles,
        runUp,
        new Rung(new EntryAngle(degrees)),
        new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT, null));
  }

  private static PlacedRep rewarded(PlacedRep rep, List<Reward> rewards) {
    RepDetails said = rep.details();
    return new PlacedRep(
        rep.moment(),
        rep.rep(),
        rep.session(),
        rep.dog(),
        rep.manoeuvre(),
        rep.outcome(),
        new RepDetails(
            said.dogSide(),
            said.backChainStep(),
            said.jumpTurn(),
            said.lateralDistance(),
            said.handlerAt(),
            said.crossAt(),
            said.approach(),
            said.setup(),
            said.poleSet(),
            said.atPole(),
            rewards,
            said.help(),
            said.handler(),
            said.observer(),
            said.drive(),
            said.stride()),
        rep.angle(),
        rep.setup(),
        rep.setupEvent(),
        rep.note(),
        rep.amendedBy(),
        rep.duplicates());
  }

  private Instant next() {
    return BEGUN.plus(Duration.ofMinutes(reps.size()));
  }

  private void ran(int times, Drill drill, Outcome outcome, Help help) {
    for (int i = 0; i < times; i++) {
      reps.add(rewarded(Ran.of(drill, outcome, help, next()), LEANEST));
    }
  }

  /** So often that the leanest step is the one to go on with. */
  private void clean(Drill drill) {
    ran(12, drill, Outcome.CLEAN, Help.NONE);
  }

  private int step(Drill drill) {
    return step(STAGE, drill);
  }

  private int step(String stage, Drill drill) {
    StandingReading reading = StandingReading.begun(PROGRAMME, null);
    reps.forEach(reading::read);
    return RewardSteps.of(reading, reps, CleanForecast.of(reps, next()))
        .of(new DrillOfStage(stage, drill));
  }

  @Test
  void whatIsNewIsRewardedOneStepRicher() {
    clean(drill(4, BARE, 30));

    assertThat(step(drill(4, BARE, 30))).isEqualTo(LEAN);
    assertThat(step(drill(4, BARE, 15))).isEqualTo(LEAN);
    assertThat(step(drill(4, BARE, 0))).isEqualTo(LEAN);
    assertThat(step(drill(4, BARE, 60))).as("a new angle").isEqualTo(LEAN - 1);
    assertThat(step(drill(4, BARE, -30))).as("a new side").isEqualTo(LEAN - 1);
    assertThat(step(drill(5, BARE, 30))).as("another line").isEqualTo(LEAN - 1);
    assertThat(step(drill(4, RunUp.over(LeadIn.TUNNEL), 30)))
        .as("another run-up")
        .isEqualTo(LEAN - 1);
  }

  @Test
  void anAngleIsNewBeyondTheProgrammesTolerance() {
    clean(drill(4, BARE, 30));
    double tolerance = PROGRAMME.stage(STAGE).orElseThrow().terms().toleranceDegrees();

    assertThat(step(drill(4, BARE, 30 + tolerance))).isEqualTo(LEAN);
    assertThat(step(drill(4, BARE, 30 + tolerance + 0.1))).isEqualTo(LEAN - 1);
  }

  @Test
  void straightOnBelongsToBothSides() {
    clean(drill(4, BARE, 0));

    assertThat(step(drill(4, BARE, 0))).isEqualTo(LEAN);
    assertThat(step(drill(4, BARE, 4))).isEqualTo(LEAN);
    assertThat(step(drill(4, BARE, -4))).isEqualTo(LEAN);
    assertThat(step(drill(4, BARE, -30))).isEqualTo(LEAN - 1);
  }

  @Test
  void polesAloneFromWhereAJumpWillBeAreNotNewToADogThatRanThem() {
    clean(drill(4, BARE, 30));

    assertThat(step(drill(4, new RunUp(LeadIn.JUMP, BackChainStep.POLES_ONLY, null), 30)))
        .isEqualTo(LEAN);
    assertThat(step(drill(4, RunUp.over(LeadIn.JUMP), 30))).isEqualTo(LEAN - 1);
  }

  @Test
  void missesAndHelpedRepsDoNotMakeAPlaceKnown() {
    ran(3, drill(4, BARE, 60), Outcome.MISSED_ENTRY, Help.NONE);
    ran(3, drill(4, BARE, 60), Outcome.VOID, Help.NONE);
    ran(3, drill(4, BARE, 60), Outcome.CLEAN, Help.LURE);
    clean(drill(4, BARE, 30));

    assertThat(step(drill(4, BARE, 60))).isEqualTo(LEAN - 1);
    ran(1, drill(4, BARE, 60), Outcome.CLEAN, Help.NONE);
    assertThat(step(drill(4, BARE, 60))).isEqualTo(LEAN);
  }

  @Test
  void nothingIsRicherThanTheRichest() {
    assertThat(step(drill(4, BARE, 30))).isZero();
    assertThat(step("twelve-probe", drill(12, BARE, 0))).isZero();
  }

  @Test
  void probesToo() {
    Drill six = drill(6, BARE, 0);
    ran(1, six, Outcome.MISSED_ENTRY, Help.NONE);

    assertThat(step("six-probe", six))
        .as("raised after the miss, and one richer as it is new")
        .isEqualTo(LEAN - 2);
    ran(1, six, Outcome.CLEAN, Help.NONE);
    assertThat(step("six-probe", six)).as("held, and not new any more").isEqualTo(LEAN);
  }
}
