package dev.poleward.domain.judgement;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.programme.StageKind;
import java.util.List;

/**
 * A stage as it stands with a dog.
 *
 * @param waitsFor ids of stages that come first and are not done
 * @param pools in the stage's order
 */
public record StageStanding(
    Stage stage, StageState state, List<String> waitsFor, List<PoolStanding> pools) {

  /** Keeps the lists from changing. */
  public StageStanding {
    waitsFor = List.copyOf(waitsFor);
    pools = List.copyOf(pools);
  }

  /** Whether it may be tried before its turn, and costs nothing. */
  public boolean isProbe() {
    return stage.terms().kind() == StageKind.PROBE;
  }

  /** How many of its verdicts are behind the dog. */
  public int behind() {
    return (int) pools.stream().filter(PoolStanding::isBehind).count();
  }

  /**
   * Whether a rung of this stage is not behind the dog, and the steps before it are, where a jump
   * is added backwards.
   */
  public boolean isTurnOf(PoolStanding pool) {
    return !pool.isBehind()
        && pools.stream()
            .filter(other -> comesBefore(other, pool))
            .allMatch(PoolStanding::isBehind);
  }

  private static boolean comesBefore(PoolStanding one, PoolStanding other) {
    BackChainStep step = one.pool().step();
    BackChainStep others = other.pool().step();
    return step != null
        && others != null
        && step.compareTo(others) < 0
        && one.pool().rung().equals(other.pool().rung());
  }
}
