package dev.poleward.service.render;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** A stage on the way from top to bottom. */
enum WayNode {
  /** A full disc with a tick. */
  DONE,
  /** A full arrow head that points at it. */
  NOW,
  /** A thick ring. */
  OPEN,
  /** A thin ring. */
  LOCKED;

  static final double RADIUS = 8;

  void draw(Sheet sheet, double x, double y) {
    Shape disc = new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS);
    switch (this) {
      case DONE -> {
        sheet.fill(disc, Ink.BLACK);
        Path2D tick = new Path2D.Double();
        tick.moveTo(x - 4, y);
        tick.lineTo(x - 1, y + 3.5);
        tick.lineTo(x + 4.5, y - 3.5);
        sheet.draw(tick, Ink.PAPER, Pen.WHISKER);
      }
      case NOW -> {
        Path2D arrow = new Path2D.Double();
        arrow.moveTo(x - RADIUS, y - RADIUS - 1);
        arrow.lineTo(x + RADIUS + 2, y);
        arrow.lineTo(x - RADIUS, y + RADIUS + 1);
        arrow.closePath();
        sheet.fill(arrow, Ink.BLACK);
      }
      case OPEN -> {
        sheet.fill(disc, Ink.PAPER);
        sheet.draw(disc, Ink.BLACK, Pen.THRESHOLD);
      }
      case LOCKED -> {
        sheet.fill(disc, Ink.PAPER);
        sheet.draw(disc, Ink.FAINT, Pen.THIN);
      }
    }
  }
}
