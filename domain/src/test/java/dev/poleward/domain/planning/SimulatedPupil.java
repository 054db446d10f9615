package dev.poleward.domain.planning;

import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.outlook.RecordedDog;
import dev.poleward.domain.programme.DefaultProgramme;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;

/** A simulated dog that runs whatever plan it is given, every three days. */
final class SimulatedPupil {

  private static final List<Reward> PAID =
      List.of(new Reward(RewardKind.FOOD, RewardPlace.EXIT, 2, null));

  private final RecordedDog dog;
  private final StandingReading reading = StandingReading.begun(DefaultProgramme.programme(), null);
  private Instant now = Instant.parse("2026-03-02T17:00:00Z");

  SimulatedPupil(long seed) {
    SplittableRandom luck = new SplittableRandom(seed);
    this.dog = new RecordedDog("pupil", new SimulatedDog(Population.CLUB.draw(luck.split())), luck);
  }

  DogStanding standing() {
    return reading.standing(now, ClubRetention.UNKNOWN);
  }

  CleanForecast forecast() {
    return CleanForecast.of(dog.reps(), now);
  }

  SessionPlan plan(Limits limits) {
    return Planner.plan(standing(), forecast(), Available.EVERYTHING, limits);
  }

  void run(SessionPlan plan) {
    for (PlanBlock block : plan.blocks()) {
      for (int rep = 0; rep < block.reps(); rep++) {
        now = now.plusSeconds(45);
        reading.read(dog.run(block.drill().drill(), now, "session", PAID));
      }
    }
    now = now.plus(Duration.ofDays(3));
  }
}
