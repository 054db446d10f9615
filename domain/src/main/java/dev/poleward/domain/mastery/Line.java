package dev.poleward.domain.mastery;

/** A line among all curves: (intercept, slope) = from + t · along. */
record Line(double fromIntercept, double fromSlope, double alongIntercept, double alongSlope) {

  /** All curves that pass that height in logits at that place; t is the slope. */
  static Line throughHeight(double height, double place) {
    return new Line(height, 0, -place, 1);
  }

  /** All curves of that slope; t is the intercept. */
  static Line ofSlope(double slope) {
    return new Line(0, slope, 1, 0);
  }

  double intercept(double t) {
    return fromIntercept + t * alongIntercept;
  }

  double slope(double t) {
    return fromSlope + t * alongSlope;
  }
}
