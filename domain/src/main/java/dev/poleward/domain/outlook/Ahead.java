package dev.poleward.domain.outlook;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.learner.Attempt;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.outlook.Curriculum.Exercise;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.random.RandomGenerator;

/**
 * Goes ahead with a dog and a plain trainer until the programme is finished or the horizon is
 * reached. For one thread.
 */
public final class Ahead {

  /** Where a stage is not done within the horizon. */
  public static final int NEVER = Integer.MAX_VALUE;

  private static final Duration BETWEEN_REPS = Duration.ofSeconds(60);

  private Ahead() {}

  /**
   * In which session, from 1, each stage is done; 0 for those that are done already.
   *
   * @param dog as it stands; it lives on
   * @param notebook as it stands; it is written on
   * @param from when the first interval between sessions begins; the dog has not lived further
   * @param horizon how long to go on
   */
  public static int[] sessionsToStages(
      SimulatedDog dog,
      Notebook notebook,
      Rhythm rhythm,
      Instant from,
      Duration horizon,
      RandomGenerator luck) {
    PlainTrainer trainer = new PlainTrainer(notebook);
    int[] done = new int[notebook.curriculum().stages().size()];
    Arrays.fill(done, NEVER);
    note(notebook, done, 0);
    Instant end = from.plus(horizon);
    Instant begin = from.plus(rhythm.apart());
    for (int session = 1; !begin.isAfter(end) && !notebook.isFinished(); session++) {
      Instant time = begin;
      for (int rep = 0; rep < rhythm.repsPerSession() && !notebook.isFinished(); rep++) {
        Exercise exercise = trainer.next();
        Attempt attempt = dog.attempt(exercise.task(), time, luck);
        boolean clean = attempt.outcome() == Outcome.CLEAN;
        dog.rewarded(clean ? 1 : 0);
        trainer.ran(exercise, clean);
        time = time.plus(BETWEEN_REPS);
      }
      note(notebook, done, session);
      begin = begin.plus(rhythm.apart());
    }
    return done;
  }

  private static void note(Notebook notebook, int[] done, int session) {
    for (int stage = 0; stage < done.length; stage++) {
      if (done[stage] == NEVER && notebook.isDone(stage)) {
        done[stage] = session;
      }
    }
  }
}
