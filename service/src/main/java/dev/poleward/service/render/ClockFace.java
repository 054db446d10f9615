package dev.poleward.service.render;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.AnglePoint;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.MasteryCurve;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.domain.mastery.Threshold;
import dev.poleward.service.render.Mark.Hold;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The face itself. From the middle outwards: pole 1 and the other poles; a bar for each direction
 * that was tried, as long as the share seen; that share as a number; the rim with the fitted share;
 * the thresholds; the hours. For one thread.
 */
final class ClockFace {

  /** Narrower bars would be all interval; the plot has theirs. */
  private static final double INTERVAL_FROM_BAR_WIDTH = 4;

  private static final double ARROW_DEGREES = 10;
  private static final double ARROW_HEAD_DEGREES = 5;

  /** Widest bar, to either side of its direction. */
  private static final double BAR_HALF_DEGREES_MAX = 5.5;

  private static final int POLES_UNLESS_SAID = 6;
  private static final double HOURS = 19;
  private static final double THRESHOLDS = 17;
  private static final double NUMBERS = 27;
  private static final double RIM_TO_RADIUS = 0.15;
  private static final double MIDDLE = 30;

  private final Sheet sheet;
  private final MasteryCurve curve;
  private final Dial dial;
  private final double radius;
  private final double hoursAt;
  private final double thresholdsFrom;
  private final double rimTo;
  private final double rimFrom;
  private final double numbersAt;
  private final double barsTo;
  private final double barsFrom;

  ClockFace(Sheet sheet, MasteryCurve curve, double x, double y, double radius) {
    this.sheet = sheet;
    this.curve = curve;
    this.radius = radius;
    this.dial = new Dial(x, y);
    this.hoursAt = radius - HOURS / 2;
    this.thresholdsFrom = radius - HOURS - THRESHOLDS;
    this.rimTo = thresholdsFrom - 1;
    this.rimFrom = rimTo - radius * RIM_TO_RADIUS;
    this.numbersAt = rimFrom - NUMBERS / 2;
    this.barsTo = rimFrom - NUMBERS;
    this.barsFrom = MIDDLE;
  }

  void draw() {
    drawHours();
    drawSides();
    drawGuides();
    List<AnglePoint> directions = directions();
    drawBars(directions);
    curve.sides().forEach(this::drawRim);
    curve.sides().forEach(this::drawThreshold);
    drawPoles();
  }

  private void drawHours() {
    double middle = Type.NUMBER.ascent() / 2;
    for (int hour = 1; hour <= 12; hour++) {
      Point2D at = dial.at(hour * 30, hoursAt);
      boolean quarter = hour % 3 == 0;
      sheet.words(
          Integer.toString(hour),
          at.getX(),
          at.getY() + middle,
          Hold.MIDDLE,
          quarter ? Type.SAYING : Type.NOTE,
          quarter ? Ink.BLACK : Ink.QUIET);
    }
  }

  /** Which half of the face is which side, in the corners above. */
  private void drawSides() {
    double base = dial.y() - radius + Type.TEXT.ascent();
    double left = dial.x() - radius;
    double right = dial.x() + radius;
    double middle = base - Type.TEXT.ascent() / 2;
    sheet.fill(SideStyle.GAP.marker(left + 8, middle, 6), SideStyle.GAP.ink());
    sheet.words("gap", left + 20, base, Hold.LEFT, Type.NUMBER, SideStyle.GAP.ink());
    sheet.fill(SideStyle.POLE.marker(right - 8, middle, 6), SideStyle.POLE.ink());
    sheet.words("pole", right - 20, base, Hold.RIGHT, Type.NUMBER, SideStyle.POLE.ink());
  }

  private void drawGuides() {
    sheet.draw(dial.circle(barsTo), Ink.GRID, Pen.GUIDE);
    sheet.draw(dial.circle(rimFrom), Ink.GRID, Pen.GUIDE);
    sheet.draw(dial.circle(rimTo), Ink.GRID, Pen.GUIDE);
    for (int degrees = -165; degrees <= 165; degrees += 15) {
      Point2D from = dial.at(degrees, degrees % 30 == 0 ? rimTo - 5 : rimTo - 3);
      Point2D to = dial.at(degrees, rimTo);
      sheet.line(from.getX(), from.getY(), to.getX(), to.getY(), Ink.FAINT, Pen.GUIDE);
    }
  }

  /** All that was tried, ascending; straight on is among the reps of both sides, and once here. */
  private List<AnglePoint> directions() {
    return curve.sides().stream()
        .flatMap(
            side ->
                side.points().stream()
                    .filter(
                        point ->
                            point.angle().side() != EntrySide.BOTH
                                || side.side() == EntrySide.POLE))
        .sorted(Comparator.comparingDouble((AnglePoint point) -> point.angle().degrees()))
        .toList();
  }

  private void drawBars(List<AnglePoint> directions) {
    List<Rectangle2D> taken = new ArrayList<>();
    IntStream.range(0, directions.size())
        .forEach(i -> drawBar(directions.get(i), halfWidth(directions, i)));
    directions.stream()
        .sorted(Comparator.comparingInt(AnglePoint::reps).reversed())
        .forEach(point -> drawNumber(point, taken));
  }

  /** Not so wide that it would touch its neighbour. */
  private static double halfWidth(List<AnglePoint> directions, int i) {
    double here = directions.get(i).angle().degrees();
    double half = BAR_HALF_DEGREES_MAX;
    if (i > 0) {
      half = Math.min(half, (here - directions.get(i - 1).angle().degrees()) * 0.4);
    }
    if (i < directions.size() - 1) {
      half = Math.min(half, (directions.get(i + 1).angle().degrees() - here) * 0.4);
    }
    return half;
  }

  private void drawBar(AnglePoint point, double half) {
    SideStyle style = SideStyle.of(point.angle().side());
    double degrees = point.angle().degrees();
    Shape whole = dial.sector(degrees - half, degrees + half, barsFrom, barsTo);
    sheet.fill(whole, style.pale());
    if (point.observed().value() > 0) {
      double to = barRadius(point.observed().value());
      sheet.fill(dial.sector(degrees - half, degrees + half, barsFrom, to), style.ink());
    }
    sheet.draw(whole, style.ink(), Pen.GUIDE);
    drawInterval(point, half);
  }

  private double barRadius(double share) {
    return barsFrom + share * (barsTo - barsFrom);
  }

  /** The interval of the share seen, black on white so that it shows on the bar and beside it. */
  private void drawInterval(AnglePoint point, double half) {
    double degrees = point.angle().degrees();
    Estimate observed = point.observed();
    double barWidth = 2 * Math.toRadians(half) * barRadius(observed.value());
    double white = Math.min(Pen.LIMITS.width(), barWidth * 0.6);
    double black = Math.min(Pen.WHISKER.width(), barWidth * 0.3);
    if (barWidth < INTERVAL_FROM_BAR_WIDTH) {
      return;
    }
    Point2D lower = dial.at(degrees, barRadius(observed.lower()));
    Point2D upper = dial.at(degrees, barRadius(observed.upper()));
    sheet.line(
        lower.getX(),
        lower.getY(),
        upper.getX(),
        upper.getY(),
        Ink.PAPER,
        new Pen(white, List.of()));
    sheet.line(
        lower.getX(),
        lower.getY(),
        upper.getX(),
        upper.getY(),
        Ink.BLACK,
        new Pen(black, List.of()));
  }

  private void drawNumber(AnglePoint point, List<Rectangle2D> taken) {
    Point2D at = dial.at(point.angle().degrees(), numbersAt);
    sheet.wordsIfFree(
        taken,
        Long.toString(Math.round(point.observed().value() * 100)),
        at.getX(),
        at.getY() + Type.NUMBER.ascent() / 2,
        Hold.MIDDLE,
        Type.NUMBER,
        Ink.BLACK);
  }

  /** The fitted share: nothing at the inner edge of the rim, all at the outer one. */
  private void drawRim(SideMastery side) {
    if (side.fit() == null || side.points().isEmpty()) {
      return;
    }
    SideStyle style = SideStyle.of(side.side());
    int sign = sign(side);
    FittedPath.Place place = (size, share) -> dial.at(sign * size, rimRadius(share));
    FittedPath path =
        FittedPath.of(
            side.fit(),
            side.points().getFirst().angle().size(),
            side.points().getLast().angle().size());
    Path2D band = path.band(place);
    sheet.fill(band, style.pale());
    sheet.draw(band, style.ink(), Pen.GUIDE);
    sheet.draw(path.curve(place), style.ink(), style.curve());
    double level = curve.question().level();
    sheet.draw(
        dial.arc(
            sign * side.points().getFirst().angle().size(),
            sign * side.points().getLast().angle().size(),
            rimRadius(level)),
        Ink.BLACK,
        Pen.GUIDE);
  }

  private double rimRadius(double share) {
    return rimFrom + share * (rimTo - rimFrom);
  }

  private static int sign(SideMastery side) {
    return side.side() == EntrySide.GAP ? -1 : 1;
  }

  private void drawThreshold(SideMastery side) {
    int sign = sign(side);
    switch (side.threshold()) {
      case Threshold.Estimated at -> {
        drawLimits(sign, at.lower(), at.degrees(), at.upper());
        drawHand(sign * at.degrees());
      }
      case Threshold.BeyondTried beyond ->
          drawLimits(sign, beyond.lower(), beyond.greatestTried(), null);
      case Threshold.BelowTried below -> drawLimits(sign, null, below.leastTried(), below.upper());
      case Threshold.NotEnoughReps _, Threshold.NoFall _ -> {}
    }
  }

  /** An arc from limit to limit; towards one that does not exist, an arrow. */
  private void drawLimits(int sign, @Nullable Double lower, double at, @Nullable Double upper) {
    double radius = thresholdsFrom + THRESHOLDS / 2;
    double from = lower == null ? Math.max(0, at - ARROW_DEGREES) : Math.max(0, lower);
    double to = upper == null ? Math.min(179, at + ARROW_DEGREES) : Math.min(179, upper);
    sheet.draw(dial.arc(sign * from, sign * to, radius), Ink.BLACK, Pen.LIMITS);
    if (lower == null) {
      drawArrow(sign * from, -sign, radius);
    } else {
      drawStop(sign * from, radius);
    }
    if (upper == null) {
      drawArrow(sign * to, sign, radius);
    } else {
      drawStop(sign * to, radius);
    }
  }

  private void drawArrow(double degrees, int towards, double radius) {
    Point2D tip = dial.at(degrees + towards * ARROW_HEAD_DEGREES, radius);
    Point2D outer = dial.at(degrees, radius + 7);
    Point2D inner = dial.at(degrees, radius - 7);
    Path2D head = new Path2D.Double();
    head.moveTo(tip.getX(), tip.getY());
    head.lineTo(outer.getX(), outer.getY());
    head.lineTo(inner.getX(), inner.getY());
    head.closePath();
    sheet.fill(head, Ink.BLACK);
  }

  private void drawStop(double degrees, double radius) {
    Point2D from = dial.at(degrees, radius - 7);
    Point2D to = dial.at(degrees, radius + 7);
    sheet.line(from.getX(), from.getY(), to.getX(), to.getY(), Ink.BLACK, Pen.THRESHOLD);
  }

  /** The threshold: a line across the rim, with a head on the limits. */
  private void drawHand(double degrees) {
    Point2D from = dial.at(degrees, rimFrom);
    Point2D to = dial.at(degrees, thresholdsFrom + THRESHOLDS / 2);
    sheet.line(from.getX(), from.getY(), to.getX(), to.getY(), Ink.BLACK, Pen.THRESHOLD);
    ThresholdMark.diamond(sheet, to.getX(), to.getY());
  }

  private void drawPoles() {
    Integer asked = curve.question().poles();
    int poles = asked == null ? POLES_UNLESS_SAID : asked;
    double spacing = Math.min(16, (barsTo - 6) / (poles - 1));
    double radius = Math.min(4.5, spacing * 0.36);
    for (int pole = poles - 1; pole >= 0; pole--) {
      Point2D at = dial.at(180, pole * spacing);
      Shape dot =
          new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
      sheet.fill(dot, pole == 0 ? Ink.BLACK : Ink.PAPER);
      sheet.draw(dot, Ink.BLACK, Pen.THIN);
    }
  }
}
