package dev.poleward.domain.layout;

import java.util.List;

/**
 * Whether everything has room on a rectangle of ground, turned as it fits best.
 *
 * @param fits whether it has
 * @param turnedBy degrees clockwise from the poles to the long way of the ground, 0 to 179, at
 *     which there is most room
 * @param lengthNeeded metres along the ground, turned like that
 * @param widthNeeded metres across
 */
public record GroundFit(boolean fits, double turnedBy, double lengthNeeded, double widthNeeded) {

  private static final int TURNS = 180;

  /** Nobody lays out more exactly, metres. */
  private static final double TOLERANCE = 0.005;

  /**
   * Turns what lies there degree by degree.
   *
   * @param spots what must lie on the ground, one at least
   * @param length metres, above 0
   * @param width metres, above 0
   * @param around metres that must be free around it
   */
  public static GroundFit of(List<Spot> spots, double length, double width, double around) {
    GroundFit best = null;
    double bestRoom = 0;
    for (int turn = 0; turn < TURNS; turn++) {
      Heading along = new Heading(turn);
      double lengthwise = extent(spots, along) + 2 * around;
      double crosswise = extent(spots, along.right()) + 2 * around;
      double room = Math.min(length - lengthwise, width - crosswise);
      if (best == null || room > bestRoom) {
        best = new GroundFit(room >= -TOLERANCE, turn, lengthwise, crosswise);
        bestRoom = room;
      }
    }
    if (best == null) {
      throw new IllegalStateException("unreachable: there are turns to try");
    }
    return best;
  }

  private static double extent(List<Spot> spots, Heading along) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Spot spot : spots) {
      double at = spot.x() * along.x() + spot.y() * along.y();
      from = Math.min(from, at);
      to = Math.max(to, at);
    }
    return to - from;
  }
}
