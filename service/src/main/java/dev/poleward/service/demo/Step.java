package dev.poleward.service.demo;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.layout.LeadIn;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A step of what a dog is taught: one lead-in, from straight on outwards, on both entry sides.
 *
 * @param sizes sizes of the entry angle in degrees, the easiest first
 * @param repsASide how many reps are run before the other entry side has its turn: more where
 *     equipment has to be moved
 * @param turned whether the line of poles is turned in degrees, instead of moving the dog by the
 *     clock
 */
record Step(
    int poles,
    LeadIn leadIn,
    @Nullable BackChainStep backChainStep,
    List<Double> sizes,
    int repsASide,
    boolean turned) {

  private static final List<Double> ROUND_THE_CLOCK = List.of(0.0, 15.0, 30.0, 45.0, 60.0);
  private static final List<Double> EVERY_HOUR = List.of(0.0, 30.0, 60.0);

  /** The last of four poles at 0.60 m moved by 0.30 m at a time, as far as 90 degrees. */
  private static final List<Double> TURNED =
      List.of(0.0, 9.56, 19.12, 28.68, 38.24, 47.8, 57.36, 66.92, 76.48, 86.04, 90.0);

  private static Step bare(List<Double> sizes) {
    return new Step(4, LeadIn.NONE, null, sizes, 1, false);
  }

  /**
   * Four poles round the clock, a jump added backwards, a tunnel with the line turned, six poles.
   */
  static final List<Step> ALL =
      List.of(
          bare(ROUND_THE_CLOCK),
          new Step(4, LeadIn.NONE, BackChainStep.POLES_ONLY, EVERY_HOUR, 1, false),
          new Step(4, LeadIn.JUMP, BackChainStep.WRAP, EVERY_HOUR, 2, false),
          new Step(4, LeadIn.JUMP, BackChainStep.STRAIGHT, EVERY_HOUR, 2, false),
          new Step(4, LeadIn.TUNNEL, null, TURNED, 2, true),
          new Step(6, LeadIn.TUNNEL, null, EVERY_HOUR, 2, true));

  /** Few angles and easy ones, and nothing to jump. */
  static final List<Step> YOUNG = List.of(bare(List.of(0.0, 15.0, 30.0)));

  /** Six poles straight on, tried early; failing it costs nothing. */
  static final Step PROBE = new Step(6, LeadIn.NONE, null, List.of(0.0), 1, false);
}
