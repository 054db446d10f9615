package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.AimEvent.GoalSet;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.outlook.Goal;
import dev.poleward.domain.outlook.Outlook;
import dev.poleward.domain.outlook.OutlookQuestion;
import dev.poleward.service.codec.Writing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Goals as the contract shows them. Immutable; safe for use by many threads. */
final class GoalShape {

  /** Most goals of one answer; those that were set first are left out. */
  static final int GOALS_MAX = 100;

  /** All goals of a dog. */
  ObjectNode of(String dog, OutlookQuestion asked, List<ObjectNode> goals) {
    return new Writing()
        .put("dog", dog)
        .putPrinted("agedTo", asked.today())
        .putObjects("goals", goals, goal -> goal)
        .done();
  }

  /** The goals, what was set last first. */
  List<ObjectNode> of(List<Goal> goals, Outlook outlook) {
    return goals.reversed().stream().limit(GOALS_MAX).map(goal -> goal(goal, outlook)).toList();
  }

  private static ObjectNode goal(Goal goal, Outlook outlook) {
    GoalSet set = goal.set().event();
    Writing shape =
        new Writing()
            .put("event", goal.set().id())
            .putPrinted("set", goal.set().time())
            .putPrinted("by", set.by())
            .put("stage", set.stage())
            .put("state", goal.state());
    Estimate chance = goal.chance();
    if (chance != null && outlook instanceof Outlook.Told told) {
      shape
          .put("chance", chance(chance))
          .put("rhythm", OutlookShape.rhythm(told.likeliest()).done());
    }
    return shape.put("text", sentence(goal, chance)).done();
  }

  private static ObjectNode chance(Estimate chance) {
    return new Writing()
        .put("value", Thousandths.of(chance.value()))
        .put("lower", Thousandths.of(chance.lower()))
        .put("upper", Thousandths.of(chance.upper()))
        .done();
  }

  private static String sentence(Goal goal, @Nullable Estimate chance) {
    return switch (goal.state()) {
      case REACHED -> "It is reached.";
      case AHEAD ->
          "%d of 100 dogs like this one get there in time."
              .formatted(chance == null ? 0 : Math.round(100 * chance.value()));
      case MISSED -> "Its day is over.";
      case CANNOT_TELL -> "It cannot be told yet; the outlook says why.";
      case NO_SUCH_STAGE -> "The stage is not on the way to the end of the dog's programme.";
    };
  }
}
