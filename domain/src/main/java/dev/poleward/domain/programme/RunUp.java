package dev.poleward.domain.programme;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.layout.LeadIn;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the dog does before the poles: the lead-in and, with a jump, the step by which the jump is
 * added backwards.
 *
 * @param step null without a jump
 * @param turn which way the jump is wrapped; null but for a wrap
 */
public record RunUp(LeadIn leadIn, @Nullable BackChainStep step, @Nullable JumpTurn turn) {

  private static final RunUp BARE = new RunUp(LeadIn.NONE, null, null);
  private static final RunUp TUNNEL = new RunUp(LeadIn.TUNNEL, null, null);
  private static final RunUp STRAIGHT = new RunUp(LeadIn.JUMP, BackChainStep.STRAIGHT, null);

  /** Refuses a step without a jump, a jump without a step, and a wrap without a turn. */
  public RunUp {
    if ((leadIn == LeadIn.JUMP) != (step != null)
        || (step == BackChainStep.WRAP) != (turn != null)) {
      throw new IllegalArgumentException("no run-up: " + leadIn + ", " + step + ", " + turn);
    }
  }

  /**
   * The run-ups that a stage asks for, in order: a wrap stands for one to each side, and a jump
   * without steps is taken straight.
   */
  static List<RunUp> of(LeadIn leadIn, List<BackChainStep> steps) {
    if (leadIn != LeadIn.JUMP) {
      return List.of(new RunUp(leadIn, null, null));
    }
    List<BackChainStep> asked = steps.isEmpty() ? List.of(BackChainStep.STRAIGHT) : steps;
    return asked.stream().sorted().flatMap(step -> ofStep(step).stream()).toList();
  }

  private static List<RunUp> ofStep(BackChainStep step) {
    return switch (step) {
      case POLES_ONLY, STRAIGHT -> List.of(new RunUp(LeadIn.JUMP, step, null));
      case WRAP ->
          List.of(
              new RunUp(LeadIn.JUMP, step, JumpTurn.LEFT),
              new RunUp(LeadIn.JUMP, step, JumpTurn.RIGHT));
    };
  }

  /**
   * How a rep came to the poles, as it was run. A jump of which no step is said was taken straight;
   * without a jump steps say nothing.
   *
   * @return null for a wrap that does not say its turn
   */
  public static @Nullable RunUp asRun(LeadIn leadIn, RepDetails said) {
    return switch (leadIn) {
      case NONE -> BARE;
      case TUNNEL -> TUNNEL;
      case JUMP ->
          switch (said.backChainStep()) {
            case null -> STRAIGHT;
            case POLES_ONLY -> BARE;
            case STRAIGHT -> STRAIGHT;
            case WRAP ->
                said.jumpTurn() == null
                    ? null
                    : new RunUp(leadIn, BackChainStep.WRAP, said.jumpTurn());
          };
    };
  }

  /** How a dog comes from what stands before the poles when nothing else is said: straight. */
  public static RunUp over(LeadIn leadIn) {
    return switch (leadIn) {
      case NONE -> BARE;
      case TUNNEL -> TUNNEL;
      case JUMP -> STRAIGHT;
    };
  }

  /** What the dog does: poles alone count as no lead-in. */
  public RunUp asRun() {
    return step == BackChainStep.POLES_ONLY ? BARE : this;
  }
}
