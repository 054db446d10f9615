package dev.poleward.domain.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands on the ground. A setup is a whole: one that leaves a member out does not inherit it
 * from the setup before.
 *
 * @param poles number of poles, 2 to 24
 * @param spacing metres between neighbouring poles
 * @param leadIn what the dog comes from
 * @param leadInDistance metres from the lead-in to pole 1
 * @param approach where the lead-in stands; absent where the rep says where the dog started
 * @param jumpHeight metres
 * @param jumpFacing degrees by which the jump is turned from facing pole 1
 * @param aids guides, gates and the like, in the trainer's words
 */
public record Setup(
    int poles,
    double spacing,
    LeadIn leadIn,
    @Nullable Double leadInDistance,
    @Nullable Approach approach,
    @Nullable Double jumpHeight,
    @Nullable Double jumpFacing,
    @Nullable List<String> aids) {

  /** Keeps the aids from changing. */
  public Setup {
    aids = aids == null ? null : List.copyOf(aids);
  }
}
