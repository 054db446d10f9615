package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.Pegs.Side;
import dev.poleward.domain.layout.Pegs.Tapes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two tapes to a place and back. */
class PegsTest {

  /** Triangles with whole sides: exact [R]. The foot of the fifth lies outside the base. */
  @ParameterizedTest
  @CsvSource({
    "14, 13, 15, 5, 12",
    "6, 5, 5, 3, 4",
    "25, 15, 20, 9, 12",
    "21, 10, 17, 6, 8",
    "4, 13, 15, -5, 12"
  })
  void twoTapesMeet(double apart, double fromA, double fromB, double x, double y) {
    Pegs pegs = new Pegs(new Spot(0, 0), new Spot(apart, 0));

    Spot left = pegs.meet(new Tapes(fromA, fromB, Side.LEFT)).orElseThrow();
    Spot right = pegs.meet(new Tapes(fromA, fromB, Side.RIGHT)).orElseThrow();

    assertThat(left.x()).isCloseTo(x, within(1e-9));
    assertThat(left.y()).isCloseTo(y, within(1e-9));
    assertThat(right.x()).isCloseTo(x, within(1e-9));
    assertThat(right.y()).isCloseTo(-y, within(1e-9));
    assertThat(pegs.tapesTo(left)).isEqualTo(new Tapes(fromA, fromB, Side.LEFT));
    assertThat(pegs.tapesTo(right)).isEqualTo(new Tapes(fromA, fromB, Side.RIGHT));
  }

  /** 10, 4 and 6 just touch; 10, 4 and 5 do not reach each other [R]. */
  @Test
  void tapesThatDoNotReachEachOtherMeetNowhere() {
    Pegs pegs = new Pegs(new Spot(0, 0), new Spot(10, 0));

    Spot touching = pegs.meet(new Tapes(4, 6, Side.LEFT)).orElseThrow();
    assertThat(touching.x()).isCloseTo(4, within(1e-9));
    assertThat(touching.y()).isCloseTo(0, within(1e-9));
    assertThat(pegs.meet(new Tapes(4, 5, Side.LEFT))).isEmpty();
  }

  /** A right angle crosses best; along the line of the pegs nothing crosses [D]. */
  @Test
  void tapesCrossAtAnAngle() {
    Pegs pegs = new Pegs(new Spot(0, 0), new Spot(25, 0));

    assertThat(pegs.crossing(new Spot(9, 12))).isCloseTo(1, within(1e-12));
    assertThat(pegs.crossing(new Spot(12, 0))).isZero();
    assertThat(pegs.crossing(pegs.a())).isZero();
  }

  @Test
  void twoPegsInOneHoleAreRefused() {
    assertThatThrownBy(() -> new Pegs(new Spot(1, 1), new Spot(1, 1)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
