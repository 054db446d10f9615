package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.learner.Attempt;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.outlook.StartingStage.Chance;
import dev.poleward.domain.outlook.StartingStage.Finding.NothingAllowed;
import dev.poleward.domain.outlook.StartingStage.Finding.Proposed;
import dev.poleward.domain.outlook.StartingStage.Finding.Undecided;
import dev.poleward.domain.outlook.StartingStage.ToTry;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class StartingStageTest {

  private static final Panel PANEL = Panel.of(Walkable.PROGRAMME);
  private static final Predicate<Drill> ANYTHING = _ -> true;

  private static StartingStage proposed(List<PlacedRep> reps) {
    return StartingStage.of(PANEL, reps, ANYTHING);
  }

  /** Runs what is asked for, one rep after the other, ten at most. */
  private static StartingStage tried(SimulatedDog dog, long seed) {
    SplittableRandom luck = new SplittableRandom(seed);
    List<PlacedRep> reps = new ArrayList<>();
    StartingStage stage = proposed(reps);
    while (!stage.next().isEmpty() && reps.size() < 10) {
      Drill drill = stage.next().getFirst().drill();
      Attempt attempt =
          dog.attempt(
              Curriculum.task(drill),
              Walkable.BEGIN.plusSeconds(31_536_000L + 120L * reps.size()),
              luck);
      reps.add(
          RecordedDog.placed(
              drill,
              attempt,
              null,
              new Moment(
                  Walkable.BEGIN.plusSeconds(60L * reps.size()), "e-%02d".formatted(reps.size())),
              "juniper",
              "s-1"));
      stage = proposed(reps);
    }
    return stage;
  }

  private static String idOf(StartingStage stage) {
    return Objects.requireNonNull(stage.proposed()).id();
  }

  @Test
  void beforeTheFirstRepEveryStageIsAsLikelyAndTheEasiestComesFirst() {
    StartingStage stage = proposed(List.of());

    assertThat(stage.proposed()).isNull();
    assertThat(stage.clear()).isFalse();
    assertThat(stage.stages()).extracting(Chance::chance).allMatch(c -> Math.abs(c - 0.25) < 1e-9);
    assertThat(stage.finished()).isCloseTo(0.25, within(1e-9));
    assertThat(stage.next())
        .isNotEmpty()
        .isSortedAccordingTo((a, b) -> Double.compare(b.clean(), a.clean()))
        .allMatch(each -> each.clean() >= StartingStage.CLEAN_MIN);
  }

  @Test
  void aBeginnerBeginsAtTheBeginningAndATrainedDogFurtherOn() {
    int beginners = 0;
    int trained = 0;
    for (int seed = 0; seed < 12; seed++) {
      StartingStage beginner = tried(new SimulatedDog(Temper.ORDINARY), seed);
      StartingStage known = tried(Walkable.after(30, Temper.QUICK, seed).dog(), seed);
      assertThat(beginner.reps()).isBetween(StartingStage.REPS_MIN, 10);
      beginners += idOf(beginner).equals("three") ? 1 : 0;
      trained += idOf(known).equals("three") ? 0 : 1;
    }
    assertThat(beginners).isGreaterThanOrEqualTo(10);
    assertThat(trained).isGreaterThanOrEqualTo(10);
  }

  @Test
  void whatADogMayNotRunIsNeitherAskedForNorProposed() {
    List<PlacedRep> reps = Walkable.after(40, Temper.QUICK, 5).reps();
    StartingStage stage = StartingStage.of(PANEL, reps, drill -> drill.poles() < 4);

    assertThat(idOf(stage)).isEqualTo("three");
    assertThat(stage.finding())
        .isInstanceOfSatisfying(
            Proposed.class, found -> assertThat(found.shown().id()).isNotEqualTo("three"));
    assertThat(StartingStage.of(PANEL, List.of(), drill -> drill.poles() < 4).next())
        .extracting(ToTry::drill)
        .allMatch(drill -> drill.poles() == 3);
  }

  @Test
  void oneMoreCleanRepNeverMakesTheDogLookLessAble() {
    List<PlacedRep> reps = Walkable.after(1, Temper.ORDINARY, 3).reps().subList(0, 5);
    PlacedRep last = reps.getLast();
    Drill drill = Curriculum.of(Walkable.PROGRAMME).pools().getLast().drills().getFirst().drill();
    List<PlacedRep> more = new ArrayList<>(reps);
    more.add(
        RecordedDog.placed(
            drill,
            new Attempt(Outcome.CLEAN, null, 3, null),
            null,
            new Moment(last.moment().time().plusSeconds(60), "e-99"),
            "juniper",
            "s-1"));

    assertThat(proposed(more).stages().getFirst().chance())
        .isLessThan(proposed(reps).stages().getFirst().chance());
  }

  private static List<PlacedRep> straightOn(int times) {
    Drill drill =
        Curriculum.of(DefaultProgramme.programme()).pools().getFirst().drills().getFirst().drill();
    List<PlacedRep> reps = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      reps.add(
          RecordedDog.placed(
              drill,
              new Attempt(Outcome.CLEAN, null, 3, null),
              null,
              new Moment(Walkable.BEGIN.plusSeconds(60L * i), "e-%02d".formatted(i)),
              "juniper",
              "s-1"));
    }
    return reps;
  }

  /** A dog that ran straight on over three poles alone showed nothing of jumps or tunnels. */
  @Test
  void easyRepsProposeNothingAndAskForTellingOnes() {
    Panel panel = Panel.of(DefaultProgramme.programme());

    for (int times = StartingStage.REPS_MIN; times <= 30; times += 6) {
      StartingStage stage = StartingStage.of(panel, straightOn(times), ANYTHING);
      assertThat(stage.finding()).isEqualTo(new Undecided());
      assertThat(stage.stages()).noneMatch(Chance::ruledOut);
      assertThat(stage.next()).isNotEmpty();
    }
  }

  @Test
  void moreIsAskedForUntilItIsClear() {
    for (int seed = 0; seed < 12; seed++) {
      StartingStage stage = tried(new SimulatedDog(Temper.ORDINARY), seed);
      assertThat(stage.next().isEmpty()).isEqualTo(stage.clear());
    }
  }

  @Test
  void aDogThatMayRunNothingIsProposedNothing() {
    List<PlacedRep> reps = Walkable.after(40, Temper.QUICK, 5).reps();

    for (List<PlacedRep> run : List.of(List.<PlacedRep>of(), reps)) {
      StartingStage stage = StartingStage.of(PANEL, run, _ -> false);
      assertThat(stage.finding()).isEqualTo(new NothingAllowed());
      assertThat(stage.next()).isEmpty();
    }
  }
}
