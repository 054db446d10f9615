package dev.poleward.domain.running;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The tour part, against round trips whose shortest lengths are published. */
class HeldKarpTest {

  @Test
  void publishedRoundTripsAreFoundAsShort() {
    long[][] burma = PublishedTours.onGlobe(PublishedTours.BURMA_14);
    // Checks of the distances themselves [R].
    assertThat(burma[0][1]).isEqualTo(153);
    assertThat(burma[0][2]).isEqualTo(510);
    assertThat(burma[1][2]).isEqualTo(422);
    assertThat(burma[12][13]).isEqualTo(247);

    assertThat(HeldKarp.roundTrip(burma)).isEqualTo(3323);
    assertThat(HeldKarp.roundTrip(PublishedTours.onGlobe(PublishedTours.ULYSSES_16)))
        .isEqualTo(6859);
    assertThat(HeldKarp.roundTrip(PublishedTours.gr17())).isEqualTo(2085);
  }

  @Test
  void plainFiguresAreWalkedRound() {
    // Six points of a grid, two by three, 3 and 4 apart: 20; a hexagon of side 1: 6 [D].
    double[][] grid = {{0, 0}, {3, 0}, {6, 0}, {0, 4}, {3, 4}, {6, 4}};
    assertThat(HeldKarp.roundTrip(Plane.between(grid))).isEqualTo(20_000);
    double[][] hexagon = new double[6][2];
    for (int i = 0; i < 6; i++) {
      hexagon[i] = new double[] {Math.cos(i * Math.PI / 3), Math.sin(i * Math.PI / 3)};
    }
    assertThat(HeldKarp.roundTrip(Plane.between(hexagon))).isEqualTo(6_000);
  }

  @Test
  void anOpenWayEndsWhereItLikes() {
    // From 0 over 1 and 2 to 3, all on one line: 3; and back is not counted [D].
    double[][] line = {{0, 0}, {1, 0}, {2, 0}, {3, 0}};
    HeldKarp ways = HeldKarp.open(Plane.between(line));
    assertThat(ways.from(0, 0b1110)).isEqualTo(3_000);
    assertThat(ways.from(1, 0b1101)).isEqualTo(4_000);
    assertThat(ways.from(1, 0)).isZero();
  }
}
