package dev.poleward.service.render;

import dev.poleward.domain.mastery.Threshold;
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

  /** What lies behind the reps, so that it hides none: the limits, and a line down. */
  void drawBehind(Threshold threshold) {
    switch (threshold) {
      case Threshold.Estimated at -> {
        limits(at.lower(), at.degrees(), at.upper());
        double x = area.x(at.degrees());
        sheet.line(x, area.y(level), x, area.bottom(), Ink.BLACK, Pen.WHISKER);
      }
      case Threshold.BeyondTried beyond -> limits(beyond.lower(), beyond.greatestTried(), null);
      case Threshold.BelowTried below -> limits(null, below.leastTried(), below.upper());
      case Threshold.NotEnoughReps _, Threshold.NoFall _ -> {}
    }
  }

  /** The threshold itself; how many degrees it is, the head of the panel says. */
  void drawHead(Threshold threshold) {
    if (threshold instanceof Threshold.Estimated at) {
      diamond(sheet, area.x(at.degrees()), area.y(level));
    }
  }

  /** The threshold itself: hollow, so that it is told from reps. */
  static void diamond(Sheet sheet, double x, double y) {
    Shape diamond = SideStyle.GAP.marker(x, y, 5.5);
    sheet.fill(diamond, Ink.PAPER);
    sheet.draw(diamond, Ink.BLACK, Pen.THRESHOLD);
  }

  /** From limit to limit; towards one that does not exist, or lies beyond the axis, an arrow. */
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
}
