package dev.poleward.domain.programme;

import dev.poleward.domain.event.BackChainStep;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The drills that one verdict on moving on is about: all handlings that a stage asks for on a rung,
 * at one back-chain step. A test in each drill would take years.
 *
 * @param step null without a jump; the wraps to either side are one step
 * @param drills in the stage's order, never empty
 */
public record RungPool(Rung rung, @Nullable BackChainStep step, List<Drill> drills) {

  /** Keeps the drills from changing. */
  public RungPool {
    drills = List.copyOf(drills);
  }
}
