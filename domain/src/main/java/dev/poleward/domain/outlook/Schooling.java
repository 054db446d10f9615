package dev.poleward.domain.outlook;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.outlook.Curriculum.Exercise;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * A simulated dog that a plain trainer teaches, with the record that comes of it: what methods that
 * read records are tried on, because this dog's true temper is known. For one thread.
 */
public final class Schooling {

  private static final long SECONDS_BETWEEN_REPS = 60;

  /** What a plain trainer pays for a clean rep. */
  public static final List<Reward> PAID =
      List.of(new Reward(RewardKind.FOOD, RewardPlace.EXIT, 1, null));

  private final RecordedDog dog;
  private final PlainTrainer trainer;
  private int sessions;

  /**
   * A dog before its first session.
   *
   * @param name its id in the record
   * @param luck what chance decides by
   */
  public Schooling(String name, SimulatedDog dog, Programme programme, RandomGenerator luck) {
    this.dog = new RecordedDog(name, dog, luck);
    this.trainer = new PlainTrainer(Notebook.begun(Curriculum.of(programme)));
  }

  /** The dog as it stands. */
  public SimulatedDog dog() {
    return dog.dog();
  }

  /** What the trainer has written down. */
  public Notebook notebook() {
    return trainer.notebook();
  }

  /** The record so far, ascending by (time, id). */
  public List<PlacedRep> reps() {
    return List.copyOf(dog.reps());
  }

  /** A session; shorter where the programme is finished. */
  public void session(Instant begin, int repsOfSession) {
    Instant time = begin;
    for (int i = 0; i < repsOfSession && !trainer.notebook().isFinished(); i++) {
      Exercise exercise = trainer.next();
      PlacedRep rep = dog.run(exercise.drill(), time, "s-" + sessions, PAID);
      trainer.ran(exercise, rep.outcome() == Outcome.CLEAN);
      time = time.plusSeconds(SECONDS_BETWEEN_REPS);
    }
    sessions++;
  }
}
