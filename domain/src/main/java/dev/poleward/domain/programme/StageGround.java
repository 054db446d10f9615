package dev.poleward.domain.programme;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.layout.Setup;
import org.jspecify.annotations.Nullable;

/**
 * What stands in a stage.
 *
 * @param leadInDistance metres from the lead-in to pole 1; null where the stage leaves it open
 */
public record StageGround(PoleLine line, LeadIn leadIn, @Nullable Double leadInDistance) {

  /** Metres from pole to pole, where a document does not say [C]. */
  public static final double SPACING_USUAL = 0.6;

  /** What has to stand for a drill. Poles alone, from where a jump will be, stand without it. */
  public Setup laidFor(Drill drill) {
    boolean alone = drill.runUp().step() == BackChainStep.POLES_ONLY;
    return new Setup(
        drill.poles(),
        line.spacing(),
        alone ? LeadIn.NONE : drill.runUp().leadIn(),
        leadInDistance,
        new Approach(drill.rung().angle(), null),
        null,
        null,
        null);
  }
}
