package dev.poleward.domain.judgement;

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
}
