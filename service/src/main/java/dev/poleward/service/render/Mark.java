package dev.poleward.service.render;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/** One thing on a sheet. Shapes are not changed once they are on it. */
sealed interface Mark {

  /** An area. */
  record Filled(Shape shape, Ink ink) implements Mark {}

  /** A line. */
  record Drawn(Shape shape, Ink ink, Pen pen) implements Mark {}

  /**
   * A line of text.
   *
   * @param plain what stands in its place where there are no letters for it
   * @param x where it is held, by {@code hold}
   * @param y its base line
   * @param width how wide it is, in the lettering that pictures are measured with
   */
  record Words(
      String text, String plain, double x, double y, Hold hold, Type type, Ink ink, double width)
      implements Mark {

    /** The room that it takes. */
    Rectangle2D box() {
      double left =
          switch (hold) {
            case LEFT -> x;
            case MIDDLE -> x - width / 2;
            case RIGHT -> x - width;
          };
      return new Rectangle2D.Double(left, y - type.ascent(), width, type.ascent() + type.descent());
    }
  }

  /** Where a line of text is held: what stays in place when its letters come out wider. */
  enum Hold {
    LEFT,
    MIDDLE,
    RIGHT
  }
}
