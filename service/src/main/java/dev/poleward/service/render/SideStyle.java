package dev.poleward.service.render;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.service.render.Mark.Hold;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/**
 * How an entry side looks in every picture: a colour, and beside it a shape and a stroke, so that
 * either tells it apart where there is no colour.
 */
enum SideStyle {
  /** Round and unbroken. */
  POLE(Ink.BLUE, Ink.PALE_BLUE, Pen.CURVE),
  /** Square and dashed. */
  GAP(Ink.ORANGE, Ink.PALE_ORANGE, Pen.DASHED_CURVE),
  /** Straight on, which belongs to either. */
  STRAIGHT(Ink.QUIET, Ink.GRID, Pen.CURVE);

  private final Ink ink;
  private final Ink pale;
  private final Pen curve;

  SideStyle(Ink ink, Ink pale, Pen curve) {
    this.ink = ink;
    this.pale = pale;
    this.curve = curve;
  }

  static SideStyle of(EntrySide side) {
    return switch (side) {
      case POLE -> POLE;
      case GAP -> GAP;
      case BOTH -> STRAIGHT;
    };
  }

  Ink ink() {
    return ink;
  }

  Ink pale() {
    return pale;
  }

  Pen curve() {
    return curve;
  }

  /** The shape that stands for observed reps, as large as a circle of that radius. */
  Shape marker(double x, double y, double radius) {
    return switch (this) {
      case POLE, STRAIGHT -> new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
      case GAP -> diamond(x, y, radius * 1.25);
    };
  }

  private static Shape diamond(double x, double y, double half) {
    Path2D diamond = new Path2D.Double();
    diamond.moveTo(x, y - half);
    diamond.lineTo(x + half, y);
    diamond.lineTo(x, y + half);
    diamond.lineTo(x - half, y);
    diamond.closePath();
    return diamond;
  }

  /** The shape and the name, as a heading; where the text begins is the same for either. */
  void heading(Sheet sheet, String text, double x, double baseline) {
    double radius = 6;
    sheet.fill(marker(x + 8, baseline - Type.HEADING.ascent() / 2, radius), ink);
    sheet.words(text, x + 22, baseline, Hold.LEFT, Type.HEADING, ink);
  }
}
