package dev.poleward.service.render;

import java.awt.geom.Point2D;

/**
 * Where sizes of angles and shares lie in a plot.
 *
 * @param inset room at the ends of both axes
 * @param greatest size of the angle at the end of the axis, degrees
 */
record PlotArea(
    double left, double top, double width, double height, double inset, double greatest) {

  double right() {
    return left + width;
  }

  double bottom() {
    return top + height;
  }

  double x(double size) {
    return left + inset + size / greatest * (width - 2 * inset);
  }

  double y(double share) {
    return top + inset + (1 - share) * (height - 2 * inset);
  }

  Point2D at(double size, double share) {
    return new Point2D.Double(x(size), y(share));
  }
}
