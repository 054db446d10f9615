package dev.poleward.load.plan;

import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.programme.Programme;

/**
 * How a dog came through a programme.
 *
 * @param finished whether it did, within the sessions that were given
 * @param reps until then
 * @param clean of them
 * @param weeks until then
 */
public record Schooling(boolean finished, int reps, int clean, double weeks) {

  /** Sessions after which nobody goes on: four years of two a week. */
  private static final int SESSIONS_MAX = 416;

  static Schooling of(
      Temper temper, Programme programme, long luck, Trainer trainer, int repsOfSession) {
    Trainee dog = new Trainee(temper, programme, luck);
    boolean finished = false;
    while (!finished && dog.sessions() < SESSIONS_MAX) {
      dog.nextSession();
      trainer.train(dog, repsOfSession);
      finished = Through.is(dog.standing());
    }
    return new Schooling(finished, dog.reps().size(), dog.clean(), dog.sessions() / 2.0);
  }
}
