package dev.poleward.service.render;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.layout.EntrySide;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The rungs of a stage on one entry side, at one back-chain step.
 *
 * @param step null without a jump
 * @param pools by the size of the angle, never empty
 */
record RungRow(@Nullable BackChainStep step, EntrySide side, List<PoolStanding> pools) {

  /** Neighbours that stand alike. */
  record Run(RungMark mark, boolean behind, List<PoolStanding> pools) {}

  /** Those of a stage: step by step, straight on, then pole, then gap. */
  static List<RungRow> of(StageStanding stage) {
    List<RungRow> rows = new ArrayList<>();
    List<@Nullable BackChainStep> steps = new ArrayList<>();
    for (PoolStanding pool : stage.pools()) {
      if (!steps.contains(pool.pool().step())) {
        steps.add(pool.pool().step());
      }
    }
    for (BackChainStep step : steps) {
      for (EntrySide side : List.of(EntrySide.BOTH, EntrySide.POLE, EntrySide.GAP)) {
        List<PoolStanding> pools =
            stage.pools().stream()
                .filter(pool -> Objects.equals(pool.pool().step(), step))
                .filter(pool -> pool.pool().rung().side() == side)
                .toList();
        if (!pools.isEmpty()) {
          rows.add(new RungRow(step, side, pools));
        }
      }
    }
    return rows;
  }

  /** The same, neighbours that stand alike together. */
  List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    int from = 0;
    for (int next = 1; next <= pools.size(); next++) {
      PoolStanding first = pools.get(from);
      if (next == pools.size() || !alike(first, pools.get(next))) {
        runs.add(new Run(RungMark.of(first), first.isBehind(), pools.subList(from, next)));
        from = next;
      }
    }
    return runs;
  }

  private static boolean alike(PoolStanding one, PoolStanding other) {
    return RungMark.of(one) == RungMark.of(other) && one.isBehind() == other.isBehind();
  }
}
