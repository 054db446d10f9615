package dev.poleward.service.render;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/**
 * Directions on a face: degrees clockwise from 12, which is up; 90 is to the right. Radii in units
 * of the sheet.
 */
record Dial(double x, double y) {

  Point2D at(double degrees, double radius) {
    double turn = Math.toRadians(degrees);
    return new Point2D.Double(x + radius * Math.sin(turn), y - radius * Math.cos(turn));
  }

  Shape circle(double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  /** AWT counts degrees from 3 o'clock, and the other way round. */
  private Arc2D piece(double from, double to, double radius) {
    return new Arc2D.Double(
        x - radius, y - radius, 2 * radius, 2 * radius, 90 - from, from - to, Arc2D.OPEN);
  }

  Shape arc(double from, double to, double radius) {
    return piece(from, to, radius);
  }

  /** What lies between two directions and two radii. */
  Shape sector(double from, double to, double inner, double outer) {
    Path2D sector = new Path2D.Double(piece(from, to, outer));
    sector.append(piece(to, from, inner), true);
    sector.closePath();
    return sector;
  }
}
