package dev.poleward.domain.outlook;

import dev.poleward.domain.event.AimEvent.GoalSet;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Registry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  /** What an outlook says of goals, at the rhythm that it holds likeliest. */
  public static List<Goal> of(List<Fact<GoalSet>> goals, Outlook outlook, OutlookQuestion asked) {
    List<Goal> answered = new ArrayList<>();
    for (Fact<GoalSet> goal : goals) {
      answered.add(
          switch (outlook) {
            case Outlook.CannotTell _ -> new Goal(goal, unforeseen(goal, asked), null);
            case Outlook.Told told -> foreseen(goal, told, asked);
          });
    }
    return answered;
  }

  private static State unforeseen(Fact<GoalSet> goal, OutlookQuestion asked) {
    return goal.event().by().isBefore(asked.today()) ? State.MISSED : State.CANNOT_TELL;
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
