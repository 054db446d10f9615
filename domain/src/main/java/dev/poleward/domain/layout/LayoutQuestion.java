package dev.poleward.domain.layout;

import org.jspecify.annotations.Nullable;

/**
 * What is to be laid out.
 *
 * @param setup what shall stand
 * @param standing what stands now; absent where the ground is empty
 * @param stays what stays beside pole 1 while pieces are moved; absent: whatever carries less
 * @param turning how the line shall be turned; absent where it is not
 * @param ground the room there is; absent where there is enough
 * @param pegs where the tapes begin; absent where good places are to be found
 * @param turningRadius metres, of the dog's tightest turn at speed
 * @param clearance metres that every piece keeps from where the dog runs
 * @param jumpWidth metres from wing to wing
 * @param rules whose spacing is asked for; absent where nobody's is
 * @param polesRunTowards where the poles run on the ground, degrees clockwise from north; absent
 *     where it is not said
 */
public record LayoutQuestion(
    Setup setup,
    @Nullable Setup standing,
    Moves.@Nullable Stays stays,
    @Nullable Turning turning,
    @Nullable Ground ground,
    @Nullable Pegs pegs,
    double turningRadius,
    double clearance,
    double jumpWidth,
    @Nullable RuleBody rules,
    @Nullable Double polesRunTowards) {

  /** Metres, unless said: a middling dog that slows down for the entry (assumed; [C]). */
  public static final double TURNING_RADIUS_USUAL = 1;

  /** Metres, unless said [C]. */
  public static final double CLEARANCE_USUAL = 1;

  /** Metres, unless said [C]. */
  public static final double JUMP_WIDTH_USUAL = 1.2;

  /** Metres from the lead-in to pole 1, unless said: within what is customary. */
  public static final double LEAD_IN_USUAL = 5;

  /** How a setup is laid out where nothing more is asked. */
  public static LayoutQuestion of(Setup setup) {
    return new LayoutQuestion(
        setup,
        null,
        null,
        null,
        null,
        null,
        TURNING_RADIUS_USUAL,
        CLEARANCE_USUAL,
        JUMP_WIDTH_USUAL,
        null,
        null);
  }

  /**
   * How the line is turned.
   *
   * @param degreesEach from rung to rung
   * @param to the last rung, degrees
   */
  public record Turning(double degreesEach, double to) {}

  /**
   * A rectangle of ground.
   *
   * @param length metres
   * @param width metres
   * @param around metres that must be free around everything
   */
  public record Ground(double length, double width, double around) {

    /** Metres, unless said [C]. */
    public static final double AROUND_USUAL = 1;
  }
}
