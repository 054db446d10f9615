package dev.poleward.domain.programme;

import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.PoleLine;
import org.jspecify.annotations.Nullable;

/**
 * What stands in a stage.
 *
 * @param leadInDistance metres from the lead-in to pole 1; null where the stage leaves it open
 */
public record StageGround(PoleLine line, LeadIn leadIn, @Nullable Double leadInDistance) {

  /** Metres from pole to pole, where a document does not say [C]. */
  public static final double SPACING_USUAL = 0.6;
}
