package dev.poleward.domain.layout;

import dev.poleward.domain.layout.BoundedPath.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The ways of bounded curvature from one pose to another, one for each word that there is one for,
 * the shortest first. Built from the circles that the dog turns on and the lines that touch two of
 * them.
 */
final class BoundedPaths {

  /** What is a whole circle but for rounding is none. */
  private static final double NO_TURN_DEGREES = 1e-7;

  private final Pose from;
  private final Pose to;
  private final double radius;
  private final List<BoundedPath> found = new ArrayList<>();

  private BoundedPaths(Pose from, Pose to, double radius) {
    this.from = from;
    this.to = to;
    this.radius = radius;
  }

  /**
   * All of them, ascending by length.
   *
   * @param radius metres, above 0
   */
  static List<BoundedPath> between(Pose from, Pose to, double radius) {
    BoundedPaths paths = new BoundedPaths(from, to, radius);
    paths.sameWayRound(Word.LSL, -1);
    paths.sameWayRound(Word.RSR, 1);
    paths.otherWayRound(Word.LSR, -1);
    paths.otherWayRound(Word.RSL, 1);
    paths.threeArcs(Word.RLR, 1);
    paths.threeArcs(Word.LRL, -1);
    paths.found.sort(
        Comparator.comparingDouble(BoundedPath::length).thenComparing(BoundedPath::word));
    return List.copyOf(paths.found);
  }

  /** The circle that a dog turns on; {@code sense} is 1 to the right and -1 to the left. */
  private Spot centre(Pose pose, int sense) {
    return pose.spot().ahead(pose.heading().right(), sense * radius);
  }

  private void sameWayRound(Word word, int sense) {
    Spot first = centre(from, sense);
    Spot last = centre(to, sense);
    double straight = first.distanceTo(last);
    Heading along = straight == 0 ? from.heading() : first.towards(last);
    add(word, arc(sense, from.heading(), along), straight, arc(sense, along, to.heading()));
  }

  private void otherWayRound(Word word, int sense) {
    Spot first = centre(from, sense);
    Spot last = centre(to, -sense);
    double apart = first.distanceTo(last);
    if (apart < 2 * radius) {
      return;
    }
    double straight = Math.sqrt(apart * apart - 4 * radius * radius);
    double across = Math.toDegrees(Math.atan2(2 * radius, straight));
    Heading along = new Heading(first.towards(last).degrees() + sense * across);
    add(word, arc(sense, from.heading(), along), straight, arc(-sense, along, to.heading()));
  }

  private void threeArcs(Word word, int sense) {
    Spot first = centre(from, sense);
    Spot last = centre(to, sense);
    double apart = first.distanceTo(last);
    if (apart > 4 * radius || apart == 0) {
      return;
    }
    double aside = Math.toDegrees(Math.acos(apart / (4 * radius)));
    double towardsLast = first.towards(last).degrees();
    for (int hand : new int[] {-1, 1}) {
      Spot middle = first.ahead(new Heading(towardsLast + hand * aside), 2 * radius);
      // Where two circles touch, the dog runs at a right angle to the line between their centres.
      Heading leaving = new Heading(first.towards(middle).degrees() + sense * 90);
      Heading arriving = new Heading(middle.towards(last).degrees() - sense * 90);
      double between = arc(-sense, leaving, arriving);
      // The other hand's middle arc is the rest of the circle, and then it is never the shortest.
      if (between >= Math.PI * radius) {
        add(word, arc(sense, from.heading(), leaving), between, arc(sense, arriving, to.heading()));
        return;
      }
    }
  }

  /** Metres of the arc from one heading to another, 0 to a whole circle. */
  private double arc(int sense, Heading begin, Heading end) {
    double turn = sense * (end.degrees() - begin.degrees());
    double degrees = turn - 360 * Math.floor(turn / 360);
    return degrees > 360 - NO_TURN_DEGREES ? 0 : Math.toRadians(degrees) * radius;
  }

  private void add(Word word, double first, double middle, double last) {
    found.add(new BoundedPath(from, radius, word, List.of(first, middle, last)));
  }
}
