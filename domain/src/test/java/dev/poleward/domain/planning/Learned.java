package dev.poleward.domain.planning;

import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.Ran;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A dog that learned stages of the default programme without a miss, and what it ran since. */
final class Learned {

  private static final Programme PROGRAMME = DefaultProgramme.programme();

  /** More than any rule of the programme asks for. */
  private static final int REPS_OF_POOL = 24;

  private final List<PlacedRep> reps = new ArrayList<>();
  private Instant now = Instant.parse("2026-03-02T17:00:00Z");

  Learned(String... stages) {
    for (String stage : stages) {
      for (RungPool pool : PROGRAMME.stage(stage).orElseThrow().pools()) {
        List<Drill> drills = pool.drills();
        for (int rep = 0; rep < REPS_OF_POOL; rep++) {
          run(drills.get(rep % drills.size()), Outcome.CLEAN, 1);
        }
      }
    }
  }

  Learned run(Drill drill, Outcome outcome, int count) {
    for (int rep = 0; rep < count; rep++) {
      reps.add(Ran.of(drill, outcome, Help.NONE, now));
      now = now.plusSeconds(45);
    }
    return this;
  }

  Learned missed(String stage, int count) {
    return run(
        PROGRAMME.stage(stage).orElseThrow().drills().getFirst(), Outcome.SKIPPED_POLE, count);
  }

  Learned daysPass(int days) {
    now = now.plus(Duration.ofDays(days));
    return this;
  }

  DogStanding standing() {
    StandingReading reading = StandingReading.begun(PROGRAMME, null);
    reps.forEach(reading::read);
    return reading.standing(now, ClubRetention.UNKNOWN);
  }

  SessionPlan plan(Available available, Limits limits) {
    return Planner.plan(standing(), CleanForecast.of(reps, now), available, limits);
  }
}
