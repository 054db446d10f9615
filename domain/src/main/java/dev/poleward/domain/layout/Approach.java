package dev.poleward.domain.layout;

import org.jspecify.annotations.Nullable;

/**
 * Where the dog comes from, as it was said: an angle, a clock position, or both in agreement.
 *
 * <p>Both are kept as given, because an event is never edited, not even into an equal one.
 *
 * @param angle the angle, if one was given
 * @param clock the clock position, if one was given
 */
public record Approach(@Nullable EntryAngle angle, @Nullable ClockPosition clock) {

  /** Degrees by which an angle may differ from the clock position said beside it. */
  public static final double AGREEMENT_DEGREES = 1e-6;

  /** Refuses an approach that says nothing or contradicts itself. */
  public Approach {
    if (angle == null && clock == null) {
      throw new IllegalArgumentException("an approach says an angle, a clock position or both");
    }
    if (angle != null && clock != null && !agree(angle.degrees(), clock)) {
      throw new IllegalArgumentException("angle " + angle.degrees() + " is not " + clock);
    }
  }

  /** Whether an angle in degrees and a clock position mean the same approach. */
  public static boolean agree(double degrees, ClockPosition clock) {
    return Math.abs(degrees - clock.angle().degrees()) <= AGREEMENT_DEGREES;
  }

  /** The entry angle meant, whichever way it was said. */
  public EntryAngle entry() {
    if (clock != null) {
      return clock.angle();
    }
    if (angle != null) {
      return angle;
    }
    throw new IllegalStateException("unreachable: an approach says at least one");
  }
}
