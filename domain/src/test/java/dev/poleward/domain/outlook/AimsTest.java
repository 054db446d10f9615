package dev.poleward.domain.outlook;

import static dev.poleward.domain.history.Tell.barePoles;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.setupAt;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.AimEvent.GoalSet;
import dev.poleward.domain.event.AimEvent.HomeworkSet;
import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.history.Asked;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Homework, goals and trials, as they are told. Minute 0 is 17:00 on 4 May 2026. */
class AimsTest {

  private static final LocalDate TODAY = LocalDate.parse("2026-05-04");

  private static Happening homework(LocalDate due, Map<String, Object> drill) {
    return Happening.of(new HomeworkSet("juniper", List.of(drill), due));
  }

  private static Happening goal(String dog, LocalDate by, @Nullable String stage) {
    return Happening.of(new GoalSet(dog, by, stage));
  }

  private static Happening trial(Outcome outcome, @Nullable Double angle) {
    return Happening.of(new TrialRun("juniper", 4, outcome, null, null, angle));
  }

  private static List<Homework> homework(Told told, LocalDate today) {
    Asked asked = told.whenAsked();
    return Homework.of(
        "juniper", asked.registry(), asked.placement().ofDog("juniper"), today, ZoneOffset.UTC);
  }

  @Test
  void whatFitsIsCountedFromWhenItWasSet() {
    Told told =
        givenTraining(
            setupAt(45),
            rep("r-before"),
            homework(TODAY, Map.of("poles", 4L, "leadIn", "tunnel", "clock", "1:30", "reps", 2L)),
            rep("r-1"),
            rep("r-2", said -> said.ended(Outcome.MISSED_ENTRY)),
            rep("r-void", said -> said.ended(Outcome.VOID)));

    Homework homework = homework(told, TODAY).getFirst();

    assertThat(homework.state()).isEqualTo(Homework.State.DONE);
    assertThat(homework.drills().getFirst().reps()).isEqualTo(2);
    assertThat(homework.drills().getFirst().clean()).isEqualTo(1);
  }

  @Test
  void whatDiffersFromWhatIsSaidDoesNotFit() {
    List<Map<String, Object>> others =
        List.of(
            Map.of("poles", 6L),
            Map.of("leadIn", "jump"),
            Map.of("angle", -45.0),
            Map.of("angle", 51.0),
            Map.of("manoeuvre", "recall"),
            Map.of("dogSide", "left"));
    List<Map<String, Object>> same =
        List.of(
            Map.of("text", "whatever you like"),
            Map.of("angle", 41.0),
            Map.of("manoeuvre", "alongside", "spacing", 0.5));
    for (Map<String, Object> drill : others) {
      Told told = givenTraining(homework(TODAY, drill), setupAt(45), rep("r-1"));
      assertThat(homework(told, TODAY).getFirst().state()).isEqualTo(Homework.State.OPEN);
      assertThat(homework(told, TODAY.plusDays(1)).getFirst().state())
          .isEqualTo(Homework.State.OVERDUE);
    }
    for (Map<String, Object> drill : same) {
      Told told = givenTraining(homework(TODAY, drill), setupAt(45), rep("r-1"));
      assertThat(homework(told, TODAY).getFirst().state()).isEqualTo(Homework.State.DONE);
    }
  }

  @Test
  void whatIsRunAfterTheDayComesTooLate() {
    Told told =
        givenTraining(
            homework(TODAY.minusDays(1), Map.of("manoeuvre", "alongside")),
            setupAt(45),
            rep("r-1"));

    assertThat(homework(told, TODAY).getFirst().state()).isEqualTo(Homework.State.OVERDUE);
  }

  @Test
  void theLatestGoalOfAStageStands() {
    Told told =
        givenTraining(
            goal("juniper", TODAY, "four"),
            goal("juniper", TODAY.plusDays(9), null),
            goal("juniper", TODAY.plusDays(5), "four"),
            goal("bramble", TODAY.plusDays(7), "six"),
            merged("bramble", "juniper"));

    assertThat(Goal.standing("juniper", told.whenAsked().registry()))
        .extracting(goal -> goal.event().by())
        .containsExactly(TODAY.plusDays(9), TODAY.plusDays(5), TODAY.plusDays(7));
    assertThat(Goal.standing("juniper", told.whenAskedAsOf(1).registry())).hasSize(2);
  }

  private static Trials trials(List<Happening> happenings) {
    Asked asked = givenTraining(happenings.toArray(Happening[]::new)).whenAsked();
    return Trials.of("juniper", asked.registry(), asked.placement().ofDog("juniper"));
  }

  private static List<Happening> training(int clean, int missed) {
    List<Happening> happenings = new ArrayList<>();
    happenings.add(setupAt(30));
    for (int i = 0; i < clean + missed; i++) {
      Outcome outcome = i < clean ? Outcome.CLEAN : Outcome.POPPED_OUT;
      happenings.add(rep("r-" + i, said -> said.ended(outcome)));
    }
    return happenings;
  }

  @Test
  void fewTrialsSayNothing() {
    List<Happening> happenings = training(20, 0);
    happenings.add(trial(Outcome.POPPED_OUT, null));

    Trials trials = trials(happenings);

    assertThat(trials.runs().getFirst().reps()).isEqualTo(20);
    assertThat(trials.carryOver().getFirst().verdict()).isEqualTo(Trials.Verdict.NOT_ENOUGH_YET);
  }

  @Test
  void cleanInTrainingAndNotInTrialsFallsShort() {
    List<Happening> happenings = training(28, 2);
    for (int i = 0; i < 8; i++) {
      happenings.add(trial(i < 2 ? Outcome.CLEAN : Outcome.POPPED_OUT, 35.0));
    }

    Trials.CarryOver four = trials(happenings).carryOver().getFirst();

    assertThat(four.verdict()).isEqualTo(Trials.Verdict.FALLS_SHORT);
    assertThat(four.runs()).isEqualTo(8);
    assertThat(four.reps()).isEqualTo(30);
    assertThat(Objects.requireNonNull(four.change()).value()).isNegative();
  }

  @Test
  void cleanInBothCarriesOver() {
    List<Happening> happenings = training(50, 10);
    for (int i = 0; i < 12; i++) {
      happenings.add(trial(Outcome.CLEAN, null));
    }

    assertThat(trials(happenings).carryOver().getFirst().verdict())
        .isEqualTo(Trials.Verdict.CARRIES_OVER);
  }

  @Test
  void trainingFromElsewhereOrOnOtherPolesIsNotCompared() {
    List<Happening> happenings = training(20, 0);
    happenings.add(rep("r-bare", said -> said.over(barePoles(6)).with(Manoeuvre.RECALL)));
    happenings.add(trial(Outcome.CLEAN, -30.0));
    happenings.add(trial(Outcome.CLEAN, 50.0));
    happenings.add(trial(Outcome.CLEAN, 40.0));
    happenings.add(trial(Outcome.VOID, null));

    Trials trials = trials(happenings);

    assertThat(trials.runs()).extracting(Trials.Run::reps).containsExactly(20, 20, 0, 0);
    assertThat(trials.carryOver().getFirst().runs()).isEqualTo(3);
  }
}
