package dev.poleward.domain.outlook;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.outlook.Curriculum.Exercise;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Dogs that stand where a stage begins: simulated ones, taught by a plain trainer through all
 * stages before. The same programme has the same panel. For one thread.
 *
 * @param atStage for each stage on the way to the end, and for the end, the dogs that stand there;
 *     none where no dog of the panel came so far
 */
record Panel(List<List<SimulatedDog>> atStage) {

  /** Dogs that set out. */
  static final int DOGS = 40;

  /** Reps after which a dog is no longer taught. */
  private static final int REPS_MAX = 4_000;

  private static final int REPS_A_SESSION = 10;
  private static final Duration BETWEEN_SESSIONS = Duration.ofHours(84);
  private static final Instant BEGIN = Instant.EPOCH;

  static Panel of(Curriculum curriculum) {
    List<List<SimulatedDog>> atStage = new ArrayList<>();
    for (int stage = 0; stage <= curriculum.stages().size(); stage++) {
      atStage.add(new ArrayList<>());
    }
    SplittableRandom random = new SplittableRandom(Seed.of("panel", curriculum.programme()));
    for (int dog = 0; dog < DOGS; dog++) {
      walk(curriculum, random.split(), atStage);
    }
    return new Panel(atStage);
  }

  private static void walk(
      Curriculum curriculum, SplittableRandom random, List<List<SimulatedDog>> atStage) {
    SimulatedDog dog = new SimulatedDog(Population.CLUB.draw(random));
    PlainTrainer trainer = new PlainTrainer(Notebook.begun(curriculum));
    Instant time = BEGIN;
    int noted = 0;
    for (int rep = 0; ; rep++) {
      for (; noted <= trainer.notebook().stage(); noted++) {
        atStage.get(noted).add(dog.copy());
      }
      if (rep == REPS_MAX || trainer.notebook().isFinished()) {
        return;
      }
      time = time.plus(rep % REPS_A_SESSION == 0 ? BETWEEN_SESSIONS : Duration.ofMinutes(1));
      Exercise exercise = trainer.next();
      boolean clean = dog.attempt(exercise.task(), time, random).outcome() == Outcome.CLEAN;
      dog.rewarded(clean ? 1 : 0);
      trainer.ran(exercise, clean);
    }
  }
}
