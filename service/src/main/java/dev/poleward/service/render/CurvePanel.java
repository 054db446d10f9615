package dev.poleward.service.render;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.AnglePoint;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.service.render.Mark.Hold;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One entry side of the curve picture: a head in words, and the plot. For one thread. */
final class CurvePanel {

  private static final double AXIS_LABELS = 44;
  private static final double PLOT_HEIGHT_TO_WIDTH = 0.72;

  /** Room at the ends of the axes, so that what lies there is whole. */
  private static final double INSET = 12;

  private static final double TICK_LABEL_WIDTH = 46;

  private final Sheet sheet;
  private final MasteryWords words;
  private final SideMastery side;
  private final SideStyle style;
  private final double greatest;
  private final double width;
  private final double height;

  CurvePanel(
      Sheet sheet,
      MasteryWords words,
      SideMastery side,
      double greatest,
      double width,
      double plotHeightMax) {
    this.sheet = sheet;
    this.words = words;
    this.side = side;
    this.style = SideStyle.of(side.side());
    this.greatest = greatest;
    this.width = width;
    this.height = Math.min(plotHeightMax, width * PLOT_HEIGHT_TO_WIDTH);
  }

  double headHeight() {
    return head(new Sheet(sheet.lettering()), 0, 0) + 10;
  }

  void drawHead(double x, double top) {
    head(sheet, x, top);
  }

  private double head(Sheet on, double x, double top) {
    style.heading(on, MasteryWords.name(side.side()), x, top + Type.HEADING.ascent());
    double y = top + Type.HEADING.leading();
    y = on.paragraph(MasteryWords.approach(side.side()), x, y, width, Type.NOTE, Ink.QUIET);
    y = on.paragraph(words.threshold(side), x, y + 2, width, Type.SAYING, Ink.BLACK);
    y = on.paragraph(words.reps(side), x, y, width, Type.NOTE, Ink.QUIET);
    return side.shapesDisagree()
        ? on.paragraph(MasteryWords.DISAGREE, x, y, width, Type.NOTE, Ink.BLACK)
        : y;
  }

  /**
   * Draws the plot.
   *
   * @return where it ends
   */
  double drawPlot(double left, double top) {
    PlotArea area =
        new PlotArea(left + AXIS_LABELS, top, width - AXIS_LABELS, height, INSET, greatest);
    drawGrid(area);
    if (side.points().isEmpty()) {
      sheet.words(
          "no reps",
          area.left() + area.width() / 2,
          area.top() + area.height() / 2,
          Hold.MIDDLE,
          Type.TEXT,
          Ink.QUIET);
    } else {
      drawFit(area);
      drawSteps(area);
      drawLevel(area);
      ThresholdMark threshold = new ThresholdMark(sheet, words.levelShare(), area);
      threshold.drawBehind(side.threshold());
      drawObserved(area);
      threshold.drawHead(side.threshold());
    }
    drawAxes(area);
    return drawAngles(area);
  }

  private void drawGrid(PlotArea area) {
    for (int percent = 0; percent <= 100; percent += 20) {
      double y = area.y(percent / 100.0);
      sheet.line(area.left(), y, area.right(), y, Ink.GRID, Pen.GUIDE);
    }
  }

  private void drawAxes(PlotArea area) {
    sheet.line(area.left(), area.top(), area.left(), area.bottom(), Ink.BLACK, Pen.AXIS);
    sheet.line(area.left(), area.bottom(), area.right(), area.bottom(), Ink.BLACK, Pen.AXIS);
    double level = area.y(words.levelShare());
    double middle = Type.NUMBER.ascent() / 2;
    sheet.words(words.level(), area.left() - 7, level + middle, Hold.RIGHT, Type.NUMBER, Ink.BLACK);
    for (int percent = 0; percent <= 100; percent += 20) {
      double y = area.y(percent / 100.0);
      if (Math.abs(y - level) >= Type.NUMBER.leading()) {
        sheet.words(percent + "%", area.left() - 7, y + middle, Hold.RIGHT, Type.SMALL, Ink.QUIET);
      }
    }
  }

  /** Degrees, clock positions and numbers of reps below the plot. */
  private double drawAngles(PlotArea area) {
    double perStep = area.x(30) - area.x(0);
    int step = perStep >= TICK_LABEL_WIDTH ? 30 : 60;
    double degreesLine = area.bottom() + 8 + Type.NUMBER.ascent();
    double clockLine = degreesLine + Type.NUMBER.leading();
    for (int degrees = 0; degrees <= greatest; degrees += 15) {
      double x = area.x(degrees);
      boolean labelled = degrees % step == 0;
      sheet.line(x, area.bottom(), x, area.bottom() + (labelled ? 7 : 4), Ink.BLACK, Pen.AXIS);
      if (labelled) {
        sheet.words(degrees + "°", x, degreesLine, Hold.MIDDLE, Type.NUMBER, Ink.BLACK);
        if (degrees < 180) {
          sheet.words(clock(degrees), x, clockLine, Hold.MIDDLE, Type.SMALL, Ink.QUIET);
        }
      }
    }
    double repsLine = clockLine + Type.SMALL.leading() + 4;
    if (!side.points().isEmpty()) {
      drawReps(area, repsLine);
    }
    return repsLine + Type.SMALL.descent();
  }

  private String clock(int size) {
    EntryAngle angle = new EntryAngle(side.side() == EntrySide.GAP ? -size : size);
    return angle.clock().orElseThrow().toString();
  }

  /** Numbers of reps below their angles, most first, as many as there is room for. */
  private void drawReps(PlotArea area, double line) {
    sheet.words("reps", area.left() - 7, line, Hold.RIGHT, Type.SMALL, Ink.QUIET);
    List<Rectangle2D> taken = new ArrayList<>();
    side.points().stream()
        .sorted(Comparator.comparingInt(AnglePoint::reps).reversed())
        .forEach(
            point ->
                sheet.wordsIfFree(
                    taken,
                    Integer.toString(point.reps()),
                    area.x(point.angle().size()),
                    line,
                    Hold.MIDDLE,
                    Type.SMALL,
                    Ink.BLACK));
  }

  /** The fitted curve and its band over what was tried, and not beyond. */
  private void drawFit(PlotArea area) {
    if (side.fit() == null) {
      return;
    }
    FittedPath path =
        FittedPath.of(
            side.fit(),
            side.points().getFirst().angle().size(),
            side.points().getLast().angle().size());
    Path2D band = path.band(area::at);
    sheet.fill(band, style.pale());
    sheet.draw(band, style.ink(), Pen.GUIDE);
    sheet.draw(path.curve(area::at), style.ink(), style.curve());
  }

  /** The isotonic fit: a step for each angle, that changes midway to the next. */
  private void drawSteps(PlotArea area) {
    List<AnglePoint> points = side.points();
    Path2D steps = new Path2D.Double();
    for (int i = 0; i < points.size(); i++) {
      double size = points.get(i).angle().size();
      double from = i == 0 ? size : (points.get(i - 1).angle().size() + size) / 2;
      double to = i == points.size() - 1 ? size : (size + points.get(i + 1).angle().size()) / 2;
      double y = area.y(points.get(i).isotonic());
      if (i == 0) {
        steps.moveTo(area.x(from), y);
      } else {
        steps.lineTo(area.x(from), y);
      }
      steps.lineTo(area.x(to), y);
    }
    sheet.draw(steps, Ink.FAINT, Pen.DOTTED);
  }

  private void drawLevel(PlotArea area) {
    double y = area.y(words.levelShare());
    sheet.line(area.left(), y, area.right(), y, Ink.BLACK, Pen.LEVEL);
  }

  private void drawObserved(PlotArea area) {
    for (AnglePoint point : side.points()) {
      double x = area.x(point.angle().size());
      ObservedMark.draw(
          sheet,
          style,
          x,
          area.y(point.observed().lower()),
          area.y(point.observed().value()),
          area.y(point.observed().upper()),
          point.weight());
    }
  }
}
