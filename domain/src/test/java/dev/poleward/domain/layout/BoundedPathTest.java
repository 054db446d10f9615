package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.BoundedPath.Word;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shortest ways of bounded curvature. */
class BoundedPathTest {

  private static final int POSES = 3_000;

  /**
   * The parts of the six words, radius 1, from (0, 0, alpha) to (d, 0, beta), angles
   * counter-clockwise from the x axis; empty where there is no such way. From the table in the
   * tests of Dubins.jl (test/test_path.jl), which were written for another implementation, by the
   * formulas of Shkel and Lumelsky 2001 [T].
   */
  @ParameterizedTest
  @CsvSource({
    "LSL,-90,-90,0.2,1.57079632679490,0.200000000000000,4.71238898038469",
    "LSR,-90,-90,0.2,,,",
    "RSL,-90,-90,0.2,5.85348564102816,0.916515138991168,5.85348564102816",
    "RSR,-90,-90,0.2,4.71238898038469,0.200000000000000,1.57079632679490",
    "RLR,-90,-90,0.2,1.52077546998913,6.18314359356805,4.66236812357892",
    "LRL,-90,-90,0.2,4.66236812357892,6.18314359356805,1.52077546998913",
    "LSL,-90,-90,10,1.57079632679490,10.0000000000000,4.71238898038469",
    "LSR,-90,-90,10,1.82347658193698,7.74596669241483,1.82347658193698",
    "RSL,-90,-90,10,4.87983705960438,11.8321595661992,4.87983705960438",
    "RSR,-90,-90,10,4.71238898038469,10.0000000000000,1.57079632679490",
    "RLR,-90,-90,10,,,",
    "LRL,-90,-90,10,,,",
    "LSL,-90,0,0.6,3.52209903070216,1.07703296142690,4.33188260327232",
    "LSR,-90,0,0.6,,,",
    "RSL,-90,0,0.6,,,",
    "RSR,-90,0,0.6,5.27098829572825,1.88679622641132,5.72458599183602",
    "RLR,-90,0,0.6,1.63817896180931,5.30075194652129,2.09177665791708",
    "LRL,-90,0,0.6,0.107883633503051,5.73793981996096,0.917667206073218",
    "LSL,-90,0,10,1.68145354796879,9.05538513813742,6.17252808600569",
    "LSR,-90,0,10,1.68283839261674,8.83176086632785,0.112042065821841",
    "RSL,-90,0,10,4.80380493701101,10.8627804912002,0.0914159566263198",
    "RSR,-90,0,10,4.80304886758544,11.0453610171873,6.19252541997884",
    "LSL,-90,90,1.2,4.71238898038469,0.800000000000000,4.71238898038469",
    "RSR,-90,90,1.2,4.71238898038469,3.20000000000000,4.71238898038469",
    "RLR,-90,90,1.2,0.643501108793284,4.42859487117636,0.643501108793284",
    "LRL,-90,90,1.2,1.36943840600457,5.88046946559892,1.36943840600457",
    "LSL,-90,90,10,1.57079632679490,8.00000000000000,1.57079632679490",
    "LSR,-90,90,10,1.77215424758523,9.79795897113271,4.91374690117502",
    "LSL,0,-90,0.2,5.58844703098288,1.56204993518133,5.40712725658139",
    "RSR,0,-90,0.2,4.03764803816114,1.28062484748657,3.81633359581335",
    "RLR,0,-90,1.2,1.51039488352173,5.76759130093350,5.82799274420666",
    "LRL,0,-90,1.2,2.06626351279921,4.98578201185216,1.34872217225806",
    "RSL,0,-90,1.2,0.548201457476526,1.35646599662505,5.26059043786122",
    "LSL,0,0,1.2,0,1.2,0",
    "RSR,0,0,10,0,10,0",
    "LSL,0,90,1.2,4.90978454023457,1.01980390271856,2.94419709373991",
    "LSR,0,90,1.2,0.548201457476526,1.35646599662505,5.26059043786122"
  })
  void eachWordHasThePublishedParts(
      Word word,
      double alpha,
      double beta,
      double apart,
      @Nullable Double first,
      @Nullable Double middle,
      @Nullable Double last) {
    Optional<BoundedPath> path =
        BoundedPaths.between(pose(0, 0, alpha), pose(apart, 0, beta), 1).stream()
            .filter(each -> each.word() == word)
            .findFirst();

    if (first == null || middle == null || last == null) {
      assertThat(path).isEmpty();
    } else {
      assertThat(path.orElseThrow().parts().get(0)).isCloseTo(first, within(1e-9));
      assertThat(path.orElseThrow().parts().get(1)).isCloseTo(middle, within(1e-9));
      assertThat(path.orElseThrow().parts().get(2)).isCloseTo(last, within(1e-9));
    }
  }

  /** Dubins.jl, test/test1.jl [T]. */
  @Test
  void theShortestHasThePublishedLength() {
    BoundedPath shortest =
        BoundedPaths.between(pose(0, 0, 0), pose(5, 0, Math.toDegrees(3)), 1).getFirst();

    assertThat(shortest.length()).isCloseTo(8.2725, within(1e-3));
  }

  /** By arithmetic [D]: back on a parallel way two radii off is half a circle. */
  @Test
  void halfACircleLeadsBack() {
    BoundedPath path =
        BoundedPaths.between(
                new Pose(new Spot(0, 0), new Heading(0)),
                new Pose(new Spot(3, 0), new Heading(180)),
                1.5)
            .getFirst();

    assertThat(path.length()).isCloseTo(Math.PI * 1.5, within(1e-9));
    assertThat(path.turn()).isCloseTo(180, within(1e-9));
  }

  @Test
  void everyWayEndsWhereItShouldInStepsNoWiderThanAsked() {
    Random random = new Random(57);
    for (int i = 0; i < POSES; i++) {
      Pose from = pose(random);
      Pose to = pose(random);
      double radius = 0.2 + 4 * random.nextDouble();
      List<BoundedPath> paths = BoundedPaths.between(from, to, radius);

      assertThat(paths).hasSizeGreaterThanOrEqualTo(3);
      for (BoundedPath path : paths) {
        Pose end = path.end();
        assertThat(end.spot().distanceTo(to.spot())).as("%s", path).isLessThan(1e-6);
        assertThat(Math.cos(Math.toRadians(end.heading().degrees() - to.heading().degrees())))
            .as("%s", path)
            .isCloseTo(1, within(1e-9));
        List<Spot> spots = path.spots(0.1);
        for (int k = 1; k < spots.size(); k++) {
          assertThat(spots.get(k).distanceTo(spots.get(k - 1))).isLessThan(0.1 + 1e-9);
        }
      }
    }
  }

  /** No way that turns no tighter is shorter: tried with ways of many short arcs [D]. */
  @Test
  void noWayPutTogetherAtRandomIsShorter() {
    Random random = new Random(12);
    for (int i = 0; i < POSES; i++) {
      Pose at = pose(random);
      Pose from = at;
      double length = 0;
      for (int part = 0; part < 6; part++) {
        Word word = Word.values()[random.nextInt(Word.values().length)];
        BoundedPath more =
            new BoundedPath(
                at,
                1,
                word,
                List.of(random.nextDouble(), random.nextDouble(), random.nextDouble()));
        length += more.length();
        at = more.end();
      }

      assertThat(BoundedPaths.between(from, at, 1).getFirst().length()).isLessThan(length + 1e-6);
    }
  }

  private static Pose pose(Random random) {
    return pose(
        10 * random.nextDouble() - 5, 10 * random.nextDouble() - 5, 360 * random.nextDouble());
  }

  private static Pose pose(double x, double y, double counterClockwiseFromX) {
    return new Pose(new Spot(x, y), new Heading(90 - counterClockwiseFromX));
  }
}
