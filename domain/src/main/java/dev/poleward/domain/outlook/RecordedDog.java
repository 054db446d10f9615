package dev.poleward.domain.outlook;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.learner.Attempt;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/** A simulated dog with the record that comes of what it runs. For one thread. */
public final class RecordedDog {

  private final String name;
  private final SimulatedDog dog;
  private final RandomGenerator luck;
  private final List<PlacedRep> reps = new ArrayList<>();

  /**
   * A dog before its first rep.
   *
   * @param name its id in the record
   * @param luck what chance decides by
   */
  public RecordedDog(String name, SimulatedDog dog, RandomGenerator luck) {
    this.name = name;
    this.dog = dog;
    this.luck = luck;
  }

  /**
   * Runs a rep just as a drill describes it.
   *
   * @param time not before any rep that it ran earlier
   * @param rewards for a clean rep; a miss is not rewarded
   */
  public PlacedRep run(Drill drill, Instant time, String session, List<Reward> rewards) {
    Attempt attempt = dog.attempt(Curriculum.task(drill), time, luck);
    List<Reward> paid = attempt.outcome() == Outcome.CLEAN ? rewards : List.of();
    dog.rewarded(pieces(paid));
    Moment moment = new Moment(time, "%s-%06d".formatted(name, reps.size()));
    PlacedRep rep = placed(drill, attempt, paid, moment, name, session);
    reps.add(rep);
    return rep;
  }

  private static int pieces(List<Reward> rewards) {
    return rewards.stream().mapToInt(each -> each.count() == null ? 1 : each.count()).sum();
  }

  /** The dog as it stands. */
  public SimulatedDog dog() {
    return dog;
  }

  /** The record so far, ascending by (time, id); grows with every rep. */
  public List<PlacedRep> reps() {
    return Collections.unmodifiableList(reps);
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
