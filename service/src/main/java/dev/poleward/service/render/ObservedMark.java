package dev.poleward.service.render;

import java.awt.Shape;

/**
 * An observed share: a shape, larger for more weight, on the interval that the share may lie in.
 */
final class ObservedMark {

  private static final double CAP = 5;
  private static final double RADIUS_MAX = 11;

  private ObservedMark() {}

  /** A weight of 1 is 4 units, 16 are 7, 64 and more are 11. */
  static double radius(double weight) {
    return Math.min(RADIUS_MAX, 3 + Math.sqrt(weight));
  }

  static void draw(
      Sheet sheet,
      SideStyle style,
      double x,
      double lower,
      double value,
      double upper,
      double weight) {
    sheet.line(x, lower, x, upper, style.ink(), Pen.WHISKER);
    sheet.line(x - CAP, lower, x + CAP, lower, style.ink(), Pen.WHISKER);
    sheet.line(x - CAP, upper, x + CAP, upper, style.ink(), Pen.WHISKER);
    Shape marker = style.marker(x, value, radius(weight));
    sheet.fill(marker, style.ink());
    sheet.draw(marker, Ink.PAPER, Pen.THIN);
  }
}
