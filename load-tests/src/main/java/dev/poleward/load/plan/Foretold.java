package dev.poleward.load.plan;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.planning.PlanBlock;

/** What was expected of some blocks of plans, and what became of them. For one thread. */
final class Foretold {

  private int blocks;
  private int withinLimits;
  private int reps;
  private int clean;
  private double expected;
  private double chances;
  private double wrongBy;
  private double wrongAtBest;

  /** A block begins of which a fresh dog's true chance is known. */
  void begins(PlanBlock block, double chance) {
    Estimate limits = block.expected();
    blocks++;
    withinLimits += limits.lower() <= chance && chance <= limits.upper() ? 1 : 0;
  }

  /** A rep was run for which the dog's chance was that, in the mood it was in. */
  void ran(PlanBlock block, double chance, boolean isClean) {
    double outcome = isClean ? 1 : 0;
    reps++;
    clean += isClean ? 1 : 0;
    expected += block.expected().value();
    chances += chance;
    wrongBy += (block.expected().value() - outcome) * (block.expected().value() - outcome);
    wrongAtBest += (chance - outcome) * (chance - outcome);
  }

  int blocks() {
    return blocks;
  }

  int reps() {
    return reps;
  }

  /** Mean of what was expected of the reps. */
  double expected() {
    return expected / reps;
  }

  /** Mean of the dogs' true chances. */
  double chance() {
    return chances / reps;
  }

  /** Share of clean reps; limits take the reps for independent, which those of one dog are not. */
  Estimate clean() {
    return new Proportion(clean, reps - clean).wilson(Confidence.OF_95_PERCENT);
  }

  /** Share of blocks whose 95% limits held the true chance. */
  double withinLimits() {
    return (double) withinLimits / blocks;
  }

  /** Mean squared difference from what came (Brier 1950, Monthly Weather Review 78:1 [M]). */
  double brier() {
    return wrongBy / reps;
  }

  /** The same for who expects of every rep what came of all on average. */
  double brierOfBaseRate() {
    double share = (double) clean / reps;
    return share * (1 - share);
  }

  /** The same for who knows the dog's true chance. */
  double brierAtBest() {
    return wrongAtBest / reps;
  }
}
