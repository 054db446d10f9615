package dev.poleward.service.render;

import dev.poleward.domain.mastery.Threshold;
import dev.poleward.service.render.Mark.Hold;
import java.awt.Shape;
import java.awt.geom.Path2D;
import org.jspecify.annotations.Nullable;

/** A threshold in the plot: a line down to its angle, and its limits along the level. */
final class ThresholdMark {

  private static final double CAP = 8;
  private static final double ARROW = 9;

  private final Sheet sheet;
  private final double level;
  private final PlotArea area;

  ThresholdMark(Sheet sheet, double level, PlotArea area) {
    this.sheet = sheet;
    this.level = level;
    this.area = area;
  }

  void draw(Threshold threshold) {
    switch (threshold) {
      case Threshold.Estimated at -> {
        limits(at.lower(), at.degrees(), at.upper());
        drop(at.degrees());
      }
      case Threshold.BeyondTried beyond -> limits(beyond.lower(), beyond.greatestTried(), null);
      case Threshold.BelowTried below -> limits(null, below.leastTried(), below.upper());
      case Threshold.NotEnoughReps _, Threshold.NoFall _ -> {}
    }
  }

  /** The threshold itself: hollow, so that it is told from reps. */
  static void diamond(Sheet sheet, double x, double y) {
    Shape diamond = SideStyle.GAP.marker(x, y, 6);
    sheet.fill(diamond, Ink.PAPER);
    sheet.draw(diamond, Ink.BLACK, Pen.THRESHOLD);
  }

  /** From limit to limit; towards a limit that does not exist, an arrow. */
  private void limits(@Nullable Double lower, double from, @Nullable Double upper) {
    limit(lower, from, -1);
    limit(upper, from, 1);
  }

  private void limit(@Nullable Double limit, double from, int towards) {
    double y = area.y(level);
    if (limit != null && limit >= 0 && limit <= area.greatest()) {
      double x = area.x(limit);
      sheet.line(area.x(from), y, x, y, Ink.BLACK, Pen.LIMITS);
      sheet.line(x, y - CAP, x, y + CAP, Ink.BLACK, Pen.THRESHOLD);
    } else {
      double end = towards < 0 ? area.left() + 2 : area.right();
      sheet.line(area.x(from), y, end - towards * ARROW, y, Ink.BLACK, Pen.LIMITS);
      Path2D arrow = new Path2D.Double();
      arrow.moveTo(end, y);
      arrow.lineTo(end - towards * (ARROW + 3), y - CAP);
      arrow.lineTo(end - towards * (ARROW + 3), y + CAP);
      arrow.closePath();
      sheet.fill(arrow, Ink.BLACK);
    }
  }

  private void drop(double degrees) {
    double x = area.x(degrees);
    double y = area.y(level);
    sheet.line(x, y, x, area.bottom(), Ink.BLACK, Pen.THRESHOLD);
    diamond(sheet, x, y);
    String text = MasteryWords.degrees(degrees);
    double room = sheet.lettering().width(text, Type.SAYING) * Room.WIDER + 12;
    boolean right = x + room < area.right();
    double left = right ? x + 4 : x - room + 2;
    double base = area.bottom() - 8;
    sheet.fillBox(left, base - 15, room - 6, 19, Ink.PAPER);
    sheet.words(
        text, right ? x + 8 : x - 8, base, right ? Hold.LEFT : Hold.RIGHT, Type.SAYING, Ink.BLACK);
  }
}
