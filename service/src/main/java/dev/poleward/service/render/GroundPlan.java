package dev.poleward.service.render;

import dev.poleward.domain.layout.BoundedPath;
import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.Piece;
import dev.poleward.domain.layout.Spot;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a place on the ground lies on the sheet. As on the clock face, 12 is up and the poles run
 * down, so what is to the dog's right lies to the left.
 *
 * @param left of the part of the sheet that it takes
 * @param top of it
 * @param scale units of the sheet for a metre
 * @param eastmost the greatest x on it, which lies leftmost
 * @param nearest the least y on it, which lies topmost
 * @param width units of the sheet
 * @param height units of the sheet
 */
record GroundPlan(
    double left,
    double top,
    double scale,
    double eastmost,
    double nearest,
    double width,
    double height) {

  private static final double SPOTS_APART = 0.05;

  /** Units of the sheet round everything, for names. */
  private static final double AROUND = 26;

  /** As large as there is room for. */
  static GroundPlan of(Layout layout, double left, double top, double width, double heightMax) {
    List<Spot> spots = shown(layout);
    double west = spots.stream().mapToDouble(Spot::x).min().orElse(0);
    double east = spots.stream().mapToDouble(Spot::x).max().orElse(0);
    double near = spots.stream().mapToDouble(Spot::y).min().orElse(0);
    double far = spots.stream().mapToDouble(Spot::y).max().orElse(0);
    double scale =
        Math.min(
            (width - 2 * AROUND) / Math.max(1, east - west),
            (heightMax - 2 * AROUND) / Math.max(1, far - near));
    double spare = width - 2 * AROUND - (east - west) * scale;
    return new GroundPlan(
        left,
        top,
        scale,
        east + (AROUND + spare / 2) / scale,
        near - AROUND / scale,
        width,
        (far - near) * scale + 2 * AROUND);
  }

  private static List<Spot> shown(Layout layout) {
    List<Spot> spots = new ArrayList<>(layout.pieces().all().stream().map(Piece::spot).toList());
    spots.add(layout.pegs().a());
    spots.add(layout.pegs().b());
    double dial = dialRadius(layout);
    spots.add(new Spot(dial, 0));
    spots.add(new Spot(-dial, 0));
    spots.add(new Spot(0, -dial));
    spots.add(new Spot(0, dial));
    if (layout.path() != null) {
      spots.addAll(layout.path().spots(SPOTS_APART));
    }
    return spots;
  }

  /** Metres from pole 1 to the clock face: where the lead-in stands, within reason. */
  static double dialRadius(Layout layout) {
    return layout.pieces().start() == null
        ? Math.max(2, layout.pieces().line().length())
        : Math.clamp(layout.pieces().start().spot().distanceTo(Spot.POLE_1), 2, 10);
  }

  Point2D at(Spot spot) {
    return new Point2D.Double(
        left + (eastmost - spot.x()) * scale, top + (spot.y() - nearest) * scale);
  }

  /** The dog's way. */
  Path2D line(BoundedPath path) {
    Path2D line = new Path2D.Double();
    List<Spot> spots = path.spots(SPOTS_APART);
    Point2D from = at(spots.getFirst());
    line.moveTo(from.getX(), from.getY());
    spots.stream().skip(1).map(this::at).forEach(point -> line.lineTo(point.getX(), point.getY()));
    return line;
  }
}
