package dev.poleward.domain.outlook;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.outlook.Curriculum.Exercise;
import dev.poleward.domain.programme.Programme;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Dogs that stand in a stage: simulated ones, taught by a plain trainer through all stages before,
 * as they were where it begins and when half of it was passed. Without the latter every dog that
 * runs straight on with ease would seem to be beyond the first stage. The same programme has the
 * same panel. It takes a few hundred thousand simulated reps to put together, and is worth keeping.
 * Nothing changes it; safe for use by many threads.
 */
public final class Panel {

  /** Dogs that set out. */
  public static final int DOGS = 40;

  /** Reps after which a dog is no longer taught. */
  private static final int REPS_MAX = 4_000;

  private static final int REPS_A_SESSION = 10;
  private static final Duration BETWEEN_SESSIONS = Duration.ofHours(84);
  private static final Instant BEGIN = Instant.EPOCH;

  private final Curriculum curriculum;
  private final List<List<SimulatedDog>> atStage;

  /** By pool, stage and dog: the chance that the first drill of the pool is clean. */
  private final double[][][] clean;

  private Panel(Curriculum curriculum, List<List<SimulatedDog>> atStage) {
    this.curriculum = curriculum;
    this.atStage = atStage.stream().map(List::copyOf).toList();
    this.clean =
        curriculum.pools().stream()
            .map(pool -> chances(pool.drills().getFirst()))
            .toArray(double[][][]::new);
  }

  private double[][] chances(Exercise exercise) {
    return atStage.stream()
        .map(dogs -> dogs.stream().mapToDouble(dog -> dog.chanceOfClean(exercise.task())).toArray())
        .toArray(double[][]::new);
  }

  /** The panel of a programme. */
  public static Panel of(Programme programme) {
    Curriculum curriculum = Curriculum.of(programme);
    List<List<SimulatedDog>> atStage = new ArrayList<>();
    for (int stage = 0; stage <= curriculum.stages().size(); stage++) {
      atStage.add(new ArrayList<>());
    }
    SplittableRandom random = new SplittableRandom(Seed.of("panel", programme));
    for (int dog = 0; dog < DOGS; dog++) {
      walk(curriculum, random.split(), atStage);
    }
    return new Panel(curriculum, atStage);
  }

  private static void walk(
      Curriculum curriculum, SplittableRandom random, List<List<SimulatedDog>> atStage) {
    SimulatedDog dog = new SimulatedDog(Population.CLUB.draw(random));
    PlainTrainer trainer = new PlainTrainer(Notebook.begun(curriculum));
    Instant time = BEGIN;
    int noted = 0;
    boolean halfNoted = false;
    for (int rep = 0; ; rep++) {
      for (; noted <= trainer.notebook().stage(); noted++) {
        atStage.get(noted).add(dog.copy());
        halfNoted = false;
      }
      if (!halfNoted && trainer.notebook().isHalfDone(noted - 1)) {
        atStage.get(noted - 1).add(dog.copy());
        halfNoted = true;
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

  Curriculum curriculum() {
    return curriculum;
  }

  /** Where dogs stand: in each stage, and at the end. */
  int places() {
    return atStage.size();
  }

  /** The dogs that stand there; none where no dog of the panel came so far. Not to be run. */
  List<SimulatedDog> dogs(int place) {
    return atStage.get(place);
  }

  /** The chance that the first drill of a pool is clean, for a dog. */
  double clean(int pool, int place, int dog) {
    return clean[pool][place][dog];
  }
}
