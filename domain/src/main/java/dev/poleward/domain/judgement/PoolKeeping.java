package dev.poleward.domain.judgement;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import org.jspecify.annotations.Nullable;

/**
 * What is kept fresh by what [C]: whoever runs the harder drill also practises the easier one that
 * is part of it. Handlings are left aside.
 */
final class PoolKeeping {

  private PoolKeeping() {}

  /**
   * Whether a rep in one pool practises another: on the same entry side, or straight on, from no
   * smaller an angle, with no fewer poles and no less before them.
   */
  static boolean keeps(Stage stage, RungPool pool, Stage otherStage, RungPool other) {
    return isOnSide(pool, other)
        && pool.rung().size() >= other.rung().size()
        && stage.ground().line().poles() >= otherStage.ground().line().poles()
        && includes(
            stage.ground().leadIn(), pool.step(), otherStage.ground().leadIn(), other.step());
  }

  private static boolean isOnSide(RungPool pool, RungPool other) {
    return other.rung().side() == EntrySide.BOTH || other.rung().side() == pool.rung().side();
  }

  private static boolean includes(
      LeadIn leadIn,
      @Nullable BackChainStep step,
      LeadIn other,
      @Nullable BackChainStep otherStep) {
    if (other == LeadIn.NONE || otherStep == BackChainStep.POLES_ONLY) {
      return true;
    }
    if (leadIn != other) {
      return false;
    }
    return step == null || otherStep == null || step.compareTo(otherStep) >= 0;
  }
}
