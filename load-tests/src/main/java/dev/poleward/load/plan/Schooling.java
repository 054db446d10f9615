package dev.poleward.load.plan;

import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.programme.Programme;
import java.util.List;

/**
 * How a dog came through a programme.
 *
 * @param finished whether it did, within the sessions that were given
 * @param reps until then
 * @param clean of them
 * @param weeks until then
 * @param whenPassed true chance of a clean rep on each rung, at the end of the session in which it
 *     was passed
 * @param atEnd the same over all rungs when it was through, or was given up
 */
public record Schooling(
    boolean finished, int reps, int clean, double weeks, List<Double> whenPassed, double atEnd) {

  /** Sessions after which nobody goes on: four years of two a week. */
  private static final int SESSIONS_MAX = 416;

  static Schooling of(
      Temper temper, Programme programme, long luck, Trainer trainer, int repsOfSession) {
    Trainee dog = new Trainee(temper, programme, luck);
    Passed passed = new Passed();
    boolean finished = false;
    while (!finished && dog.sessions() < SESSIONS_MAX) {
      dog.nextSession();
      trainer.train(dog, repsOfSession);
      passed.look(dog);
      finished = Through.is(dog.standing());
    }
    return new Schooling(
        finished,
        dog.reps().size(),
        dog.clean(),
        dog.sessions() / 2.0,
        passed.whenPassed(),
        Passed.now(dog));
  }
}
