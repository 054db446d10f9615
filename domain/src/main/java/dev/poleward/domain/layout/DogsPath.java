package dev.poleward.domain.layout;

import java.util.List;
import java.util.Optional;

/**
 * The shortest way of bounded curvature into the entry gap that leads neither through the poles nor
 * round their far end, which would make it an entry of the other side: pole 1 at the dog's left
 * shoulder, then across the line of poles in the middle of the gap from its right to its left, at
 * {@value #CROSSING_DEGREES} degrees to it (assumed; [C]).
 */
public final class DogsPath {

  /** How a dog crosses the line of poles, degrees from the way it runs them. */
  public static final double CROSSING_DEGREES = 45;

  /** Metres that the dog keeps from pole 1 on its way round. */
  private static final double BEFORE_POLE_1 = 0.15;

  /** A dog that turns more than once round on its way has not been shown the entry, degrees. */
  private static final double TURN_MAX = 360;

  private static final double LOOK_EVERY = 0.02;

  private DogsPath() {}

  /** Where the dog crosses the entry gap, and which way. */
  static Pose gate(PoleLine line) {
    return new Pose(new Spot(0, line.spacing() / 2), new Heading(-CROSSING_DEGREES));
  }

  /**
   * The way; empty where each one of that radius would lead through the poles, round their far end
   * or more than once round.
   *
   * @param radius of the dog's tightest turn at speed, metres, above 0
   */
  public static Optional<BoundedPath> of(PoleLine line, Pose start, double radius) {
    return BoundedPaths.between(start, gate(line), radius).stream()
        .filter(path -> path.turn() <= TURN_MAX && keepsToItsSide(path))
        .findFirst();
  }

  private static boolean keepsToItsSide(BoundedPath path) {
    List<Spot> spots = path.spots(LOOK_EVERY);
    for (int i = 1; i < spots.size() - 1; i++) {
      Spot before = spots.get(i - 1);
      Spot after = spots.get(i);
      boolean crosses = before.x() < 0 != after.x() < 0;
      double y = (before.y() + after.y()) / 2;
      // Round the far end it would come to the entry from the other side.
      if (crosses && y > -BEFORE_POLE_1) {
        return false;
      }
    }
    return true;
  }
}
