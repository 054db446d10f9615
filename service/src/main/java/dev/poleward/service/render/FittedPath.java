package dev.poleward.service.render;

import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.LogisticFit;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** A fitted curve with its band, wherever shares and angles lie in a picture. */
record FittedPath(List<Double> sizes, List<Estimate> estimates) {

  private static final double STEP_DEGREES = 1.5;
  private static final int STEPS_MIN = 8;

  /** Where a share at the size of an angle lies. */
  interface Place {
    Point2D at(double size, double share);
  }

  /** The curve from one size to another. */
  static FittedPath of(LogisticFit fit, double least, double greatest) {
    int steps = Math.max(STEPS_MIN, (int) Math.ceil((greatest - least) / STEP_DEGREES));
    List<Double> sizes = new ArrayList<>();
    List<Estimate> estimates = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double size = least + (greatest - least) * i / steps;
      sizes.add(size);
      estimates.add(fit.bandAt(size));
    }
    return new FittedPath(sizes, estimates);
  }

  Path2D curve(Place place) {
    Path2D curve = new Path2D.Double();
    for (int i = 0; i < sizes.size(); i++) {
      add(curve, place.at(sizes.get(i), estimates.get(i).value()));
    }
    return curve;
  }

  Path2D band(Place place) {
    Path2D band = new Path2D.Double();
    for (int i = 0; i < sizes.size(); i++) {
      add(band, place.at(sizes.get(i), estimates.get(i).upper()));
    }
    for (int i = sizes.size() - 1; i >= 0; i--) {
      add(band, place.at(sizes.get(i), estimates.get(i).lower()));
    }
    band.closePath();
    return band;
  }

  private static void add(Path2D path, Point2D point) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(point.getX(), point.getY());
    } else {
      path.lineTo(point.getX(), point.getY());
    }
  }
}
