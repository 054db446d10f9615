package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one verdict is about, as it stands with a dog: a rung on one entry side, at one back-chain
 * step of a stage, all handlings together.
 *
 * @param state of the whole; never {@link DrillState#UNTOUCHED} when the stage was passed over
 * @param judgement what its reps say
 * @param drills in the order of the pool
 * @param passedOver nobody asked for it: the dog was said to start behind it
 * @param movedOn when it was moved on from for the first time; null when it was not
 * @param practised when it, or something that asks for more of the same, was last run; null when
 *     never
 * @param dueOn when it will have been left alone for too long; null when it is not solid
 * @param slippedSince when the first rep of the slip was run; null without one
 */
public record PoolStanding(
    Stage stage,
    RungPool pool,
    DrillState state,
    RungJudgement judgement,
    List<DrillStanding> drills,
    boolean passedOver,
    @Nullable Instant movedOn,
    @Nullable Instant practised,
    @Nullable Instant dueOn,
    @Nullable Instant slippedSince) {

  /** Keeps the drills from changing. */
  public PoolStanding {
    drills = List.copyOf(drills);
  }

  /** Whether nothing of it is left to learn: it was moved on from once, or passed over. */
  public boolean isBehind() {
    return passedOver || movedOn != null;
  }

  /** Whether it can be relied on today. */
  public boolean isSolid() {
    return state == DrillState.SOLID;
  }
}
