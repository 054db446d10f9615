package dev.poleward.service.demo;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.learner.Attempt;
import java.util.SplittableRandom;

/** What a rep is paid with: much on a new rung, then less, then one toy at the end at times. */
final class RewardPlan {

  /** One clean rep in so many goes unpaid once nothing is new. */
  private static final int UNPAID_ONE_IN = 4;

  private RewardPlan() {}

  /** Writes down the rewards, and says how many pieces there were. */
  static int pay(ObjectNode rep, Attempt attempt, Course course, SplittableRandom chance) {
    boolean faded = !course.isNew() && course.step().leadIn() == LeadIn.TUNNEL;
    ArrayNode rewards = rep.putArray("rewards");
    if (attempt.outcome() != Outcome.CLEAN || (faded && chance.nextInt(UNPAID_ONE_IN) == 0)) {
      return 0;
    }
    int inTheGaps = inTheGaps(course);
    if (inTheGaps > 0) {
      rewards
          .addObject()
          .put("kind", "food")
          .put("at", "gap")
          .put("count", inTheGaps)
          .put("delivery", "placed");
    }
    rewards
        .addObject()
        .put("kind", "toy")
        .put("at", "exit")
        .put("count", 1)
        .put("delivery", "thrown");
    return inTheGaps + 1;
  }

  private static int inTheGaps(Course course) {
    return switch (course.step().leadIn()) {
      case NONE -> course.isNew() ? 2 : 1;
      case JUMP, TUNNEL -> course.isNew() ? 1 : 0;
    };
  }
}
