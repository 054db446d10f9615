package dev.poleward.domain.planning;

import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.Ran;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.learner.Attempt;
import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Task;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A simulated dog that runs whatever plan it is given, every three days. */
final class SimulatedPupil {

  private final SplittableRandom luck;
  private final SimulatedDog dog;
  private final List<PlacedRep> reps = new ArrayList<>();
  private final StandingReading reading = StandingReading.begun(DefaultProgramme.programme(), null);
  private Instant now = Instant.parse("2026-03-02T17:00:00Z");

  SimulatedPupil(long seed) {
    this.luck = new SplittableRandom(seed);
    this.dog = new SimulatedDog(Population.CLUB.draw(luck.split()));
  }

  DogStanding standing() {
    return reading.standing(now);
  }

  CleanForecast forecast() {
    return CleanForecast.of(reps, now);
  }

  SessionPlan plan(Limits limits) {
    return Planner.plan(standing(), forecast(), Available.EVERYTHING, limits);
  }

  void run(SessionPlan plan) {
    for (PlanBlock block : plan.blocks()) {
      for (int rep = 0; rep < block.reps(); rep++) {
        now = now.plusSeconds(45);
        Attempt attempt = dog.attempt(task(block.drill().drill()), now, luck);
        Outcome outcome = attempt.outcome();
        dog.rewarded(outcome == Outcome.CLEAN ? 2 : 0);
        PlacedRep ran = Ran.of(block.drill().drill(), outcome, Help.NONE, now);
        reps.add(ran);
        reading.read(ran);
      }
    }
    now = now.plus(Duration.ofDays(3));
  }

  private static Task task(Drill drill) {
    return new Task(
        drill.rung().angle(),
        drill.poles(),
        drill.runUp().leadIn(),
        drill.runUp().step(),
        drill.handling().manoeuvre(),
        drill.handling().dogSide(),
        Help.NONE);
  }
}
