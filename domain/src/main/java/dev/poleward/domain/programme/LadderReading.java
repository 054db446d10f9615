package dev.poleward.domain.programme;

import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardDelivery;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the reward ladder of a programme or of a stage. */
final class LadderReading {

  private static final int STEPS_MAX = 20;
  private static final int REWARDS_MAX = 24;
  private static final int COUNT_MAX = 50;

  private LadderReading() {}

  /** The ladder of a part; null when it has none or none in order. */
  static @Nullable RewardLadder read(Part part) {
    List<RewardStep> steps = new ArrayList<>();
    for (Part step : part.parts("rewardLadder", 1, STEPS_MAX)) {
      step.require("rewards");
      List<Reward> rewards = new ArrayList<>();
      for (Part reward : step.parts("rewards", 0, REWARDS_MAX)) {
        reward.require("kind");
        reward.require("at");
        RewardKind kind = reward.choice("kind", RewardKind.class);
        RewardPlace place = reward.choice("at", RewardPlace.class);
        Integer count = reward.whole("count", 0, COUNT_MAX);
        RewardDelivery delivery = reward.choice("delivery", RewardDelivery.class);
        if (kind != null && place != null) {
          rewards.add(new Reward(kind, place, count, delivery));
        }
      }
      steps.add(new RewardStep(step.text("name", ProgrammeDocument.NAME_CHARACTERS_MAX), rewards));
    }
    return steps.isEmpty() ? null : new RewardLadder(steps);
  }
}
