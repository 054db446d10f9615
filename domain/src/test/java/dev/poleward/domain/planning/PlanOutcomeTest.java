package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.Ran;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanOutcomeTest {

  private static final Instant ISSUED = Instant.parse("2026-05-04T17:00:00Z");

  private static PlannedDrill planned(double degrees, int reps) {
    return new PlannedDrill(
        4,
        LeadIn.NONE,
        null,
        null,
        new EntryAngle(degrees),
        Manoeuvre.ALONGSIDE,
        DogSide.LEFT,
        reps);
  }

  private static PlacedRep ran(double degrees, Outcome outcome, int minutes) {
    Drill drill =
        new Drill(
            4,
            new RunUp(LeadIn.NONE, null, null),
            new Rung(new EntryAngle(degrees)),
            new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT, null));
    return Ran.of(drill, outcome, Help.NONE, ISSUED.plus(Duration.ofMinutes(minutes)));
  }

  @Test
  void eachRepCountsForTheFirstDrillThatLacksRepsAndTheRestIsApart() {
    PlanOutcome outcome =
        PlanOutcome.of(
            List.of(planned(0, 1), planned(30, 2), planned(0, 1)),
            List.of(
                ran(0, Outcome.CLEAN, 1),
                ran(33, Outcome.MISSED_ENTRY, 2),
                ran(30, Outcome.VOID, 3),
                ran(27, Outcome.CLEAN, 4),
                ran(30, Outcome.CLEAN, 5),
                ran(0, Outcome.CLEAN, 6),
                ran(-30, Outcome.POPPED_OUT, 7)),
            ISSUED);

    assertThat(outcome.drills())
        .containsExactly(
            new PlanOutcome.Done(1, 1), new PlanOutcome.Done(2, 1), new PlanOutcome.Done(1, 1));
    assertThat(outcome.otherReps()).isEqualTo(2);
    assertThat(outcome.otherClean()).isEqualTo(1);
    assertThat(outcome.reps()).isEqualTo(4);
    assertThat(outcome.clean()).isEqualTo(3);
  }

  @Test
  void whatWasRunBeforeOrLongAfterDoesNotCount() {
    PlanOutcome outcome =
        PlanOutcome.of(
            List.of(planned(0, 3)),
            List.of(
                ran(0, Outcome.CLEAN, -1),
                ran(0, Outcome.CLEAN, 0),
                ran(0, Outcome.CLEAN, 36 * 60 - 1),
                ran(0, Outcome.CLEAN, 36 * 60)),
            ISSUED);

    assertThat(outcome.reps()).isEqualTo(2);
    assertThat(outcome.otherReps()).isZero();
  }
}
