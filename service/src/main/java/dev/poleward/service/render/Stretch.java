package dev.poleward.service.render;

/**
 * From where to where something may reach across a sheet.
 *
 * @param left units of the sheet
 * @param width likewise
 */
record Stretch(double left, double width) {

  double right() {
    return left + width;
  }

  /** What remains when so much is taken from its left. */
  Stretch without(double taken) {
    return new Stretch(left + taken, width - taken);
  }
}
