package dev.poleward.domain.outlook;

import dev.poleward.domain.event.AimEvent.GoalSet;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.ProgrammeEnd;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.judgement.StageState;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Registry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * A goal with what the outlook says of it.
 *
 * @param set the event that stands
 * @param state how it stands
 * @param chance of reaching it in time, with the limits of the number of runs; null where none is
 *     told
 */
public record Goal(Fact<GoalSet> set, State state, @Nullable Estimate chance) {

  /** How a goal stands. */
  public enum State {
    /** There. */
    REACHED,
    /** To come, and the outlook says how likely. */
    AHEAD,
    /** Its day is over, and it was not reached. */
    MISSED,
    /** To come, and the outlook cannot tell. */
    CANNOT_TELL,
    /** The stage is not in the dog's programme, or not on the way to its end. */
    NO_SUCH_STAGE
  }

  /** Those that stand: of one stage, and of the whole programme, the latest that was set. */
  public static List<Fact<GoalSet>> standing(String dog, Registry registry) {
    Map<String, Fact<GoalSet>> latest = new LinkedHashMap<>();
    for (Fact<GoalSet> goal : registry.aims(dog, GoalSet.class)) {
      // No stage is called by an empty text.
      String stage = goal.event().stage() == null ? "" : goal.event().stage();
      latest.remove(stage);
      latest.put(stage, goal);
    }
    return List.copyOf(latest.values());
  }

  /**
   * What an outlook says of goals, at the rhythm that it holds likeliest. What is reached is
   * reached and what is no stage is none, whether or not anything can be told of what lies ahead.
   *
   * @param dog whose goals they are
   */
  public static List<Goal> of(
      List<Fact<GoalSet>> goals, Outlook outlook, DogCase dog, OutlookQuestion asked) {
    Optional<DogStanding> standing =
        dog.standing().inForce() instanceof ProgrammeInForce.Unreadable
            ? Optional.empty()
            : Optional.of(
                dog.standing()
                    .reading()
                    .standing(asked.agedTo(), dog.retention().of(dog.dog(), asked.agedTo())));
    List<Goal> answered = new ArrayList<>();
    for (Fact<GoalSet> goal : goals) {
      answered.add(
          switch (outlook) {
            case Outlook.CannotTell _ -> new Goal(goal, unforeseen(goal, standing, asked), null);
            case Outlook.Told told -> foreseen(goal, told, asked);
          });
    }
    return answered;
  }

  private static State unforeseen(
      Fact<GoalSet> goal, Optional<DogStanding> standing, OutlookQuestion asked) {
    return standing
        .flatMap(dog -> known(goal.event().stage(), dog))
        .orElseGet(
            () -> goal.event().by().isBefore(asked.today()) ? State.MISSED : State.CANNOT_TELL);
  }

  /** What needs no look ahead; empty where it is still to come. */
  private static Optional<State> known(@Nullable String stage, DogStanding dog) {
    if (stage == null) {
      return dog.finished() ? Optional.of(State.REACHED) : Optional.empty();
    }
    Optional<StageStanding> wanted =
        dog.stages().stream()
            .filter(each -> each.stage().id().equals(stage))
            .filter(each -> ProgrammeEnd.asksFor(each.stage()))
            .findFirst();
    if (wanted.isEmpty()) {
      return Optional.of(State.NO_SUCH_STAGE);
    }
    return wanted.filter(each -> each.state() == StageState.DONE).map(_ -> State.REACHED);
  }

  private static Goal foreseen(Fact<GoalSet> goal, Outlook.Told told, OutlookQuestion asked) {
    GoalSet set = goal.event();
    RhythmAhead ahead = told.likeliest();
    OptionalInt already = ahead.runsBy(set.stage(), told.from(), told.from());
    OptionalInt inTime = ahead.runsBy(set.stage(), set.by(), told.from());
    int runs = ahead.programme().sessions().size();
    if (inTime.isEmpty() || already.isEmpty()) {
      return new Goal(goal, State.NO_SUCH_STAGE, null);
    }
    if (already.getAsInt() == runs) {
      return new Goal(goal, State.REACHED, null);
    }
    if (set.by().isBefore(asked.today())) {
      return new Goal(goal, State.MISSED, null);
    }
    return new Goal(
        goal,
        State.AHEAD,
        new Proportion(inTime.getAsInt(), runs - inTime.getAsInt())
            .wilson(Confidence.OF_95_PERCENT));
  }
}
