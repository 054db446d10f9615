package dev.poleward.domain.layout;

import java.util.Optional;

/**
 * Signed angle between the dog's approach and the line of poles, in degrees, clockwise positive
 * seen from above; 0 is straight on.
 *
 * <p>Strictly between -180 and 180: straight back through the poles has no side.
 *
 * @param degrees the angle, -180 &lt; degrees &lt; 180
 */
public record EntryAngle(double degrees) {

  /** The straight-on entry, 12 o'clock. */
  public static final EntryAngle STRAIGHT = new EntryAngle(0);

  private static final double TOLD_APART_IN_A_DEGREE = 1e4;

  /** {@code -0.0} becomes {@code 0.0}, so that equal angles are equal records. */
  public EntryAngle {
    if (!isAllowed(degrees)) {
      throw new IllegalArgumentException("an entry angle lies between -180 and 180: " + degrees);
    }
    degrees = degrees + 0.0;
  }

  /** Whether {@code degrees} is an entry angle at all. */
  public static boolean isAllowed(double degrees) {
    return degrees > -180 && degrees < 180;
  }

  /**
   * The entry that arises when the dog keeps its way and the line of poles turns about pole 1.
   *
   * @param turn how far the line turns, 0 &le; turn &lt; 180 degrees
   */
  public static EntryAngle ofTurn(LastPoleMoves lastPole, double turn) {
    if (!(turn >= 0 && turn < 180)) {
      throw new IllegalArgumentException("the line turns by 0 to less than 180 degrees: " + turn);
    }
    return switch (lastPole) {
      case LEFT -> new EntryAngle(turn);
      case RIGHT -> new EntryAngle(-turn);
    };
  }

  /** Clockwise approaches meet pole 1 first, counter-clockwise ones the gap. */
  public EntrySide side() {
    if (degrees > 0) {
      return EntrySide.POLE;
    }
    return degrees < 0 ? EntrySide.GAP : EntrySide.BOTH;
  }

  /**
   * The angle as it can be told apart on the ground, to a ten-thousandth of a degree: 60 and what a
   * device makes of it by way of radians are one place. Angles that close to 180 stay as they are.
   */
  public EntryAngle asLaidOut() {
    double told = Math.rint(degrees * TOLD_APART_IN_A_DEGREE) / TOLD_APART_IN_A_DEGREE;
    return isAllowed(told) ? new EntryAngle(told) : this;
  }

  /** The size of the angle without its side, 0 to 180 degrees. */
  public double size() {
    return Math.abs(degrees);
  }

  /** The clock position, when the angle falls on a whole or half hour. */
  public Optional<ClockPosition> clock() {
    double halfHours = degrees / ClockPosition.DEGREES_PER_HALF_HOUR;
    if (halfHours != Math.rint(halfHours)) {
      return Optional.empty();
    }
    return Optional.of(ClockPosition.ofHalfHours(Math.floorMod((int) halfHours, 24)));
  }
}
