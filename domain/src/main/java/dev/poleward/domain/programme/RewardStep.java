package dev.poleward.domain.programme;

import dev.poleward.domain.event.Reward;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One step of a reward ladder.
 *
 * @param name what people call it
 * @param rewards what a rep earns; may be nothing
 */
public record RewardStep(@Nullable String name, List<Reward> rewards) {

  /** Keeps the rewards from changing. */
  public RewardStep {
    rewards = List.copyOf(rewards);
  }

  /** How many rewards a rep earns. */
  public int rewardsEach() {
    return rewards.stream().mapToInt(r -> r.count() == null ? 1 : r.count()).sum();
  }
}
