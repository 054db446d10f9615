package dev.poleward.service.render;

import static dev.poleward.service.render.SampleCurves.side;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.LimitMethod;
import dev.poleward.domain.mastery.LogisticFit;
import dev.poleward.domain.mastery.Threshold;
import dev.poleward.service.render.Mark.Filled;
import dev.poleward.service.render.Mark.Words;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Things lie where they are: on the face as on the ground, in the plot as on its axes. */
class PictureGeometryTest {

  @ParameterizedTest
  @CsvSource({
    "12:00,0,-1",
    "3:00,1,0",
    "9:00,-1,0",
    "1:30,0.70711,-0.70711",
    "5:30,0.25882,0.96593"
  })
  void theFaceIsSeenFromAboveWithTwelveAtTheTop(String clock, double x, double y) {
    double degrees = ClockPosition.read(clock).orElseThrow().angle().degrees();

    Point2D at = new Dial(0, 0).at(degrees, 1);

    assertThat(at.getX()).isCloseTo(x, within(1e-5));
    assertThat(at.getY()).isCloseTo(y, within(1e-5));
  }

  /** A sector lies round its direction, whichever way AWT counts. */
  @ParameterizedTest
  @CsvSource({"0", "30", "-30", "90", "-90", "165", "-165"})
  void aSectorLiesRoundItsDirection(double degrees) {
    Dial dial = new Dial(200, 100);
    Shape sector = dial.sector(degrees - 5, degrees + 5, 20, 80);

    assertThat(sector.contains(dial.at(degrees, 50))).isTrue();
    assertThat(sector.contains(dial.at(degrees, 15))).isFalse();
    assertThat(sector.contains(dial.at(degrees, 85))).isFalse();
    assertThat(sector.contains(dial.at(degrees + 8, 50))).isFalse();
    assertThat(sector.contains(dial.at(degrees + 180, 50))).isFalse();
  }

  /** An approach at 3:00 is on pole side: to the right of the face, which is left of the poles. */
  @Test
  void poleSideLiesToTheRightOfTheFaceAndGapSideToTheLeft() {
    Picture face = clock(new int[][] {{90, 10, 5}}, new int[][] {{-90, 10, 5}});
    double middle = hour(face, "12").x();

    assertThat(bars(face, Ink.BLUE)).isNotEmpty().allMatch(bar -> bar.getMinX() > middle);
    assertThat(bars(face, Ink.ORANGE)).isNotEmpty().allMatch(bar -> bar.getMaxX() < middle);
    assertThat(hour(face, "3").x()).isGreaterThan(middle);
    assertThat(hour(face, "6").y()).isGreaterThan(hour(face, "12").y());
  }

  @Test
  void thePolesRunTowardsSix() {
    Picture face = clock(new int[][] {{90, 10, 5}}, new int[][] {});
    // An arrow of the threshold may be black too.
    Rectangle2D pole1 =
        filled(face, Ink.BLACK).stream()
            .filter(dot -> Math.abs(dot.getCenterX() - hour(face, "6").x()) < 1e-9)
            .findFirst()
            .orElseThrow();

    assertThat(pole1.getCenterX()).isCloseTo(hour(face, "6").x(), within(1e-9));
    assertThat(
            filled(face, Ink.PAPER).stream()
                .filter(dot -> Math.abs(dot.getCenterX() - pole1.getCenterX()) < 1e-9)
                .filter(dot -> Math.abs(dot.getWidth() - pole1.getWidth()) < 1e-9))
        .hasSize(3)
        .allMatch(dot -> dot.getCenterY() > pole1.getCenterY() + 5);
  }

  /** A bar is as long as its share: half the way for a half, nothing for none. */
  @Test
  void barsAreAsLongAsTheirShares() {
    double half = length(clock(new int[][] {{90, 10, 5}}, new int[][] {}));
    double all = length(clock(new int[][] {{90, 10, 10}}, new int[][] {}));

    assertThat(half / all).isCloseTo(0.5, within(0.01));
    assertThat(bars(clock(new int[][] {{90, 10, 0}}, new int[][] {}), Ink.BLUE)).isEmpty();
  }

  private static double length(Picture face) {
    return bars(face, Ink.BLUE).getFirst().getWidth();
  }

  /** Nothing white is painted but the paper and the threshold's own head: it would hide reps. */
  @Test
  void inThePlotNothingHidesReps() {
    for (int width : new int[] {360, 800}) {
      Picture plot =
          MasteryPictures.draw(SampleCurves.usual("Juniper"), MasteryPictures.Kind.CURVE, width);

      assertThat(filled(plot, Ink.PAPER).stream().filter(box -> box.getWidth() < plot.width() / 2))
          .isNotEmpty()
          .allMatch(box -> box.getWidth() < 15 && box.getHeight() < 15);
    }
  }

  @Test
  void inThePlotSharesRiseAndAnglesGoToTheRight() {
    PlotArea area = new PlotArea(40, 10, 300, 200, 12, 120);

    assertThat(area.x(0)).isEqualTo(52);
    assertThat(area.x(120)).isEqualTo(328);
    assertThat(area.y(1)).isEqualTo(22);
    assertThat(area.y(0)).isEqualTo(198);
    assertThat(area.y(0.5)).isEqualTo(110);
  }

  @Test
  void theCurveEndsWhereNothingWasTried() {
    FittedPath path =
        FittedPath.of(new LogisticFit(3.9, -0.052, 0.16, -0.0021, 0.000041, -88.2), 15, 90);

    assertThat(path.sizes().getFirst()).isEqualTo(15);
    assertThat(path.sizes().getLast()).isEqualTo(90);
  }

  @Test
  void moreRepsAreALargerMark() {
    assertThat(ObservedMark.radius(1)).isEqualTo(4);
    assertThat(ObservedMark.radius(16)).isEqualTo(7);
    assertThat(ObservedMark.radius(5_000)).isEqualTo(11);
  }

  private static Picture clock(int[][] pole, int[][] gap) {
    Threshold none = new Threshold.BeyondTried(90, null, LimitMethod.PROFILE);
    return MasteryPictures.draw(
        SampleCurves.of(
            "Juniper",
            side(EntrySide.POLE, null, none, pole),
            side(EntrySide.GAP, null, none, gap)),
        MasteryPictures.Kind.CLOCK,
        360);
  }

  private static Words hour(Picture face, String hour) {
    Optional<Words> found =
        face.marks().stream()
            .filter(Words.class::isInstance)
            .map(Words.class::cast)
            .filter(words -> words.text().equals(hour))
            .findFirst();
    return found.orElseThrow();
  }

  private static List<Rectangle2D> filled(Picture face, Ink ink) {
    return face.marks().stream()
        .filter(mark -> mark instanceof Filled filled && filled.ink() == ink)
        .map(mark -> ((Filled) mark).shape().getBounds2D())
        .toList();
  }

  /** What is filled near the middle of the face, and not a sign beside words. */
  private static List<Rectangle2D> bars(Picture face, Ink ink) {
    double y = (hour(face, "12").y() + hour(face, "6").y()) / 2;
    return filled(face, ink).stream().filter(bar -> Math.abs(bar.getCenterY() - y) < 15).toList();
  }
}
