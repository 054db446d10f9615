package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the dog comes into the entry gap. */
class DogsPathTest {

  private static final PoleLine LINE = new PoleLine(6, 0.6);

  /** Pole 1 at the left shoulder, whatever the approach: every rule book's entry [S]. */
  @ParameterizedTest
  @ValueSource(
      doubles = {
        0, 15, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165, -15, -30, -45, -60, -75, -90, -105,
        -120, -135, -150, -165
      })
  void pole1IsAtTheLeftShoulder(double angle) {
    BoundedPath path = DogsPath.of(LINE, from(angle, 5), 1).orElseThrow();

    List<Spot> spots = path.spots(0.01);
    assertThat(spots.getLast().x()).isCloseTo(0, within(1e-9));
    assertThat(spots.getLast().y()).isCloseTo(0.3, within(1e-9));
    // Beside pole 1, at the end of the way, the dog is to the right of it.
    Spot beside =
        spots.reversed().stream()
            .filter(spot -> spot.distanceTo(Spot.POLE_1) > 0.35)
            .findFirst()
            .orElseThrow();
    assertThat(beside.x()).isPositive();
    // It crosses the line in the gap, and nowhere else along the poles or beyond them.
    for (int i = 1; i < spots.size() - 1; i++) {
      boolean crosses = spots.get(i - 1).x() < 0 != spots.get(i).x() < 0;
      assertThat(crosses && spots.get(i).y() > 0).isFalse();
    }
  }

  @Test
  void aDogThatMeetsPole1FirstTurnsMoreThanOneThatMeetsTheGap() {
    for (double angle = 60; angle <= 165; angle += 15) {
      double pole = DogsPath.of(LINE, from(angle, 5), 1).orElseThrow().turn();
      double gap = DogsPath.of(LINE, from(-angle, 5), 1).orElseThrow().turn();

      assertThat(pole).isGreaterThan(gap);
    }
  }

  /** The dog has to turn at least from its heading to that across the gap [D]. */
  @Test
  void itTurnsAtLeastFromItsWayToTheWayAcross() {
    assertThat(DogsPath.of(LINE, from(-45, 6), 1).orElseThrow().turn()).isLessThan(45);
    assertThat(DogsPath.of(LINE, from(90, 6), 1).orElseThrow().turn()).isGreaterThanOrEqualTo(135);
  }

  @Test
  void aTurnThatIsTooWideLeadsThroughThePoles() {
    assertThat(DogsPath.of(new PoleLine(12, 0.6), from(150, 1.5), 8)).isEmpty();
  }

  private static Pose from(double angle, double metres) {
    Heading towardsPole = new Heading(angle);
    return new Pose(Spot.POLE_1.ahead(towardsPole, -metres), towardsPole);
  }
}
