package dev.poleward.service.render;

import dev.poleward.service.render.Mark.Hold;

/** A plot with values up its left side. For one thread. */
final class ValuePlot {

  private static final double LABELS = 58;
  private static final double HEIGHT_TO_WIDTH = 0.55;
  private static final double HEIGHT_MAX = 210;
  private static final double INSET = 8;

  private final Sheet sheet;
  private final ValueAxis axis;
  private final Stretch across;
  private final double top;
  private final double height;

  /**
   * On a part of a sheet.
   *
   * @param right room at the right that the plot leaves for its own words
   */
  ValuePlot(Sheet sheet, ValueAxis axis, Stretch whole, double right, double top) {
    this.sheet = sheet;
    this.axis = axis;
    this.across = new Stretch(whole.left() + LABELS, whole.width() - LABELS - right);
    this.top = top;
    this.height = Math.min(HEIGHT_MAX, whole.width() * HEIGHT_TO_WIDTH);
  }

  Stretch across() {
    return across;
  }

  double top() {
    return top;
  }

  double bottom() {
    return top + height;
  }

  double y(double value) {
    return bottom() - axis.share(value) * (height - INSET);
  }

  /** The lines at round values, behind all else. */
  void drawGrid() {
    for (int index = 0; index <= axis.steps(); index++) {
      double y = y(axis.value(index));
      sheet.line(across.left(), y, across.right(), y, Ink.GRID, Pen.GUIDE);
    }
  }

  /** Axes and their numbers, before all else. */
  void drawAxes() {
    sheet.line(across.left(), top, across.left(), bottom(), Ink.BLACK, Pen.AXIS);
    sheet.line(across.left(), bottom(), across.right(), bottom(), Ink.BLACK, Pen.AXIS);
    for (int index = 0; index <= axis.steps(); index++) {
      double y = y(axis.value(index)) + Type.SMALL.ascent() / 2;
      sheet.words(axis.label(index), across.left() - 7, y, Hold.RIGHT, Type.SMALL, Ink.QUIET);
    }
  }

  /** Where a row below the plot is named. */
  void nameRow(String name, double line) {
    sheet.words(name, across.left() - 7, line, Hold.RIGHT, Type.SMALL, Ink.QUIET);
  }

  /** A few words in the middle, where there is nothing to draw. */
  void drawEmpty(String why) {
    sheet.words(
        why,
        across.left() + across.width() / 2,
        top + height / 2 + Type.TEXT.ascent() / 2 - 10,
        Hold.MIDDLE,
        Type.TEXT,
        Ink.QUIET);
  }
}
