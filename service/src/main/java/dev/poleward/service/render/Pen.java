package dev.poleward.service.render;

import java.util.List;

/**
 * The strokes of every picture.
 *
 * @param width units of the sheet
 * @param dashes lengths of dash and gap in turn; empty for a line without gaps
 */
record Pen(double width, List<Double> dashes) {

  static final Pen GUIDE = new Pen(1, List.of());
  static final Pen AXIS = new Pen(1.5, List.of());
  static final Pen THIN = new Pen(1.5, List.of());
  static final Pen WHISKER = new Pen(2, List.of());
  static final Pen CURVE = new Pen(3.5, List.of());
  static final Pen DASHED_CURVE = new Pen(3.5, List.of(10.0, 5.0));
  static final Pen DOTTED = new Pen(2, List.of(2.0, 4.0));
  static final Pen DOTTED_GUIDE = new Pen(1.2, List.of(2.0, 4.0));
  static final Pen LEVEL = new Pen(2, List.of(9.0, 4.0, 2.0, 4.0));
  static final Pen THRESHOLD = new Pen(3, List.of());
  static final Pen LIMITS = new Pen(5, List.of());
}
