package dev.poleward.domain.planning;

import java.util.List;

/**
 * A session as it is to be run.
 *
 * @param blocks in their order; empty when nothing can be asked of the dog
 */
public record SessionPlan(List<PlanBlock> blocks) {

  /** Keeps the blocks from changing. */
  public SessionPlan {
    blocks = List.copyOf(blocks);
  }

  /** How many reps it has. */
  public int reps() {
    return blocks.stream().mapToInt(PlanBlock::reps).sum();
  }

  /** How many of them are for that. */
  public int reps(PlanBlock.Purpose purpose) {
    return blocks.stream()
        .filter(block -> block.purpose() == purpose)
        .mapToInt(PlanBlock::reps)
        .sum();
  }

  /** How many gaps are passed in it. */
  public int gaps() {
    return blocks.stream()
        .mapToInt(block -> block.reps() * (block.drill().drill().poles() - 1))
        .sum();
  }

  /** The most poles that stand in it; 0 without any reps. */
  public int poles() {
    return blocks.stream().mapToInt(block -> block.drill().drill().poles()).max().orElse(0);
  }

  /** Expected share of clean reps; 0 without any. */
  public double expectedClean() {
    double clean = 0;
    for (PlanBlock block : blocks) {
      clean += block.reps() * block.expected().value();
    }
    return blocks.isEmpty() ? 0 : clean / reps();
  }
}
