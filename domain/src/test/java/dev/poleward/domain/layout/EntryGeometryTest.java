package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Angles and sides by coordinates, for every tenth of a degree: pole 1 at the origin, y along the
 * poles the way the dog runs them, x to the right of it. Follows by arithmetic from how a clock
 * position and an entry are defined.
 */
class EntryGeometryTest {

  private static final double METRES_AWAY = 5;
  private static final double SPACING = 0.6;

  private record Point(double x, double y) {

    Point minus(Point other) {
      return new Point(x - other.x, y - other.y);
    }

    double length() {
      return Math.hypot(x, y);
    }

    /** Positive where {@code other} lies to the left of somebody who looks along this. */
    double cross(Point other) {
      return x * other.y - y * other.x;
    }

    double dot(Point other) {
      return x * other.x + y * other.y;
    }
  }

  private static final Point POLE_1 = new Point(0, 0);
  private static final Point POLE_2 = new Point(0, SPACING);
  private static final Point ALONG_THE_POLES = new Point(0, 1);

  /** 12 is behind pole 1; the hand runs clockwise seen from above, first to the runner's left. */
  private static Point standingAt(double degrees) {
    double hand = Math.toRadians(degrees);
    return new Point(-METRES_AWAY * Math.sin(hand), -METRES_AWAY * Math.cos(hand));
  }

  @Test
  void theClockRunsClockwiseSeenFromAbove() {
    for (int halfHour = -11; halfHour < 11; halfHour++) {
      Point here = standingAt(15 * halfHour);
      Point next = standingAt(15 * (halfHour + 1));
      // x to the right and y ahead: seen from above, a turn to the left is counter-clockwise.
      assertThat(here.cross(next)).isNegative();
    }
  }

  /** The line is an axis: poles on it, the dog's start on one side of it, as the runner sees it. */
  @Test
  void poleIsAnApproachFromTheLeftOfTheLineAndGapFromTheRight() {
    forEveryAngle(
        degrees -> {
          double left = ALONG_THE_POLES.cross(standingAt(degrees));
          assertThat(new EntryAngle(degrees).side())
              .isEqualTo(left > 0 ? EntrySide.POLE : EntrySide.GAP);
        });
  }

  /**
   * The dog enters with pole 1 at its left shoulder, so it must be to the right of pole 1 when it
   * crosses the gap. Who comes from the right of the line is there already and meets the gap; who
   * comes from the left has pole 1 between itself and there: it has to go round it.
   */
  @Test
  void whoHasToGoRoundPole1MeetsThePoleFirst() {
    Point entry = new Point(0.3, SPACING / 2);
    forEveryAngle(
        degrees -> {
          Point start = standingAt(degrees);
          boolean sameSideOfTheLine = start.x() * entry.x() > 0;
          assertThat(new EntryAngle(degrees).side())
              .isEqualTo(sameSideOfTheLine ? EntrySide.GAP : EntrySide.POLE);
        });
  }

  @Test
  void theAngleIsThatBetweenTheDogsWayAndThePoles() {
    forEveryAngle(
        degrees -> {
          Point way = POLE_1.minus(standingAt(degrees));
          Point line = POLE_2.minus(POLE_1);
          double between = Math.toDegrees(Math.acos(way.dot(line) / way.length() / line.length()));
          assertThat(new EntryAngle(degrees).size()).isCloseTo(between, within(1e-6));
        });
  }

  /**
   * The dog comes up the y axis and keeps its way; pole 1 stays and the last pole goes to one side.
   * To see which entry that is, look from the turned line: on which side of it the dog stands.
   */
  @Test
  void turningTheLineToTheDogsRightMakesItAGapToItsLeftAPole() {
    Point dog = new Point(0, -METRES_AWAY);
    for (int tenths = 1; tenths < 1_800; tenths++) {
      double turn = tenths / 10.0;
      for (LastPoleMoves moves : LastPoleMoves.values()) {
        double right = moves == LastPoleMoves.RIGHT ? 1 : -1;
        Point lastPole =
            new Point(
                right * 3 * SPACING * Math.sin(Math.toRadians(turn)),
                3 * SPACING * Math.cos(Math.toRadians(turn)));
        boolean dogLeftOfTheLine = lastPole.cross(dog) > 0;
        EntryAngle entry = EntryAngle.ofTurn(moves, turn);

        assertThat(entry.side()).isEqualTo(dogLeftOfTheLine ? EntrySide.POLE : EntrySide.GAP);
        assertThat(entry.side())
            .isEqualTo(moves == LastPoleMoves.RIGHT ? EntrySide.GAP : EntrySide.POLE);
        assertThat(entry.degrees()).isCloseTo(clockwiseAngleOf(dog, lastPole), within(1e-6));
      }
    }
  }

  /** From the direction opposite to the poles, clockwise seen from above, to where the dog is. */
  private static double clockwiseAngleOf(Point dog, Point lastPole) {
    Point twelve = new Point(-lastPole.x(), -lastPole.y());
    return Math.toDegrees(Math.atan2(-twelve.cross(dog), twelve.dot(dog)));
  }

  @Test
  void withoutTurningItStaysStraightOn() {
    assertThat(EntryAngle.ofTurn(LastPoleMoves.LEFT, 0)).isEqualTo(EntryAngle.STRAIGHT);
    assertThat(EntryAngle.ofTurn(LastPoleMoves.RIGHT, 0)).isEqualTo(EntryAngle.STRAIGHT);
  }

  private interface AngleCheck {
    void check(double degrees);
  }

  private static void forEveryAngle(AngleCheck check) {
    for (int tenths = -1_799; tenths <= 1_799; tenths++) {
      if (tenths != 0) {
        check.check(tenths / 10.0);
      }
    }
  }
}
