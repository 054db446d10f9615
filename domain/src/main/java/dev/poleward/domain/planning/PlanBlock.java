package dev.poleward.domain.planning;

import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.programme.DrillOfStage;
import org.jspecify.annotations.Nullable;

/**
 * A few reps of one drill, over one setup.
 *
 * @param reps how many, from 1; fewer where the verdict comes first
 * @param expected share of clean ones, with its doubt
 * @param fallback what is easier, for after two misses running; null when nothing is
 */
public record PlanBlock(
    DrillOfStage drill,
    int reps,
    Purpose purpose,
    Estimate expected,
    @Nullable DrillOfStage fallback) {

  boolean isOf(DrillOfStage other, Purpose otherPurpose) {
    return drill.equals(other) && purpose == otherPurpose;
  }

  PlanBlock longerBy(int more) {
    return new PlanBlock(drill, reps + more, purpose, expected, fallback);
  }

  /** What a block is for. */
  public enum Purpose {
    /** Something solid to begin with. */
    WARM_UP,
    /** It slips. */
    MEND,
    /** It is due. */
    REFRESH,
    /** What is to be learned. */
    WORK,
    /** A look ahead, which may fail. */
    PROBE,
    /** It is solid, and is to stay so. */
    KEEP,
    /** Something solid to end with. */
    FINISH
  }
}
