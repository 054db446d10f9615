package dev.poleward.domain.outlook;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.learner.Attempt;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.outlook.Curriculum.Exercise;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * A simulated dog that a plain trainer teaches, with the record that comes of it: what methods that
 * read records are tried on, because this dog's true temper is known. For one thread.
 */
public final class Schooling {

  private static final long SECONDS_BETWEEN_REPS = 60;

  private final String name;
  private final SimulatedDog dog;
  private final PlainTrainer trainer;
  private final RandomGenerator luck;
  private final List<PlacedRep> reps = new ArrayList<>();
  private int sessions;

  /**
   * A dog before its first session.
   *
   * @param name its id in the record
   * @param luck what chance decides by
   */
  public Schooling(String name, SimulatedDog dog, Programme programme, RandomGenerator luck) {
    this.name = name;
    this.dog = dog;
    this.trainer = new PlainTrainer(Notebook.begun(Curriculum.of(programme)));
    this.luck = luck;
  }

  /** The dog as it stands. */
  public SimulatedDog dog() {
    return dog;
  }

  /** What the trainer has written down. */
  public Notebook notebook() {
    return trainer.notebook();
  }

  /** The record so far, ascending by (time, id). */
  public List<PlacedRep> reps() {
    return List.copyOf(reps);
  }

  /** A session; shorter where the programme is finished. */
  public void session(Instant begin, int repsOfSession) {
    Instant time = begin;
    for (int i = 0; i < repsOfSession && !trainer.notebook().isFinished(); i++) {
      Exercise exercise = trainer.next();
      Attempt attempt = dog.attempt(exercise.task(), time, luck);
      boolean clean = attempt.outcome() == Outcome.CLEAN;
      dog.rewarded(clean ? 1 : 0);
      trainer.ran(exercise, clean);
      reps.add(rep(exercise.drill(), attempt, time));
      time = time.plusSeconds(SECONDS_BETWEEN_REPS);
    }
    sessions++;
  }

  private PlacedRep rep(Drill drill, Attempt attempt, Instant time) {
    List<Reward> rewards =
        attempt.outcome() == Outcome.CLEAN
            ? List.of(new Reward(RewardKind.FOOD, RewardPlace.EXIT, 1, null))
            : List.of();
    String rep = "%s-%06d".formatted(name, reps.size());
    return placed(drill, attempt, rewards, new Moment(time, rep), name, "s-" + sessions);
  }

  /**
   * A rep that a dog runs just as a drill describes it.
   *
   * @param number of the rep among those that it runs
   */
  public static PlacedRep ran(
      Drill drill, SimulatedDog dog, Instant time, int number, RandomGenerator luck) {
    Attempt attempt = dog.attempt(Curriculum.task(drill), time, luck);
    dog.rewarded(attempt.outcome() == Outcome.CLEAN ? 1 : 0);
    Moment moment = new Moment(time, "rep-%03d".formatted(number));
    return placed(drill, attempt, null, moment, "dog", "session");
  }

  /** A rep just as a drill describes it. */
  static PlacedRep placed(
      Drill drill,
      Attempt attempt,
      @Nullable List<Reward> rewards,
      Moment moment,
      String dog,
      String session) {
    Approach approach = new Approach(drill.rung().angle(), null);
    Setup setup =
        new Setup(drill.poles(), 0.6, drill.runUp().leadIn(), null, approach, null, null, null);
    RepDetails details =
        new RepDetails(
            drill.handling().dogSide(),
            drill.runUp().step(),
            drill.runUp().turn(),
            null,
            null,
            null,
            approach,
            setup,
            null,
            attempt.atPole(),
            rewards,
            null,
            null,
            null,
            attempt.drive(),
            null);
    return new PlacedRep(
        moment,
        moment.id(),
        session,
        dog,
        drill.handling().manoeuvre(),
        attempt.outcome(),
        details,
        drill.rung().angle(),
        setup,
        null,
        null,
        List.of(),
        List.of());
  }
}
