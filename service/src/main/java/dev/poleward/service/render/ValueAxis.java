package dev.poleward.service.render;

import java.util.Locale;

/**
 * Values up the side of a plot, with a line at each round one.
 *
 * @param from value at the bottom, a multiple of the step
 * @param steps how many, from 1
 * @param step 1, 2 or 5, times a power of ten
 * @param unit that follows each number
 */
record ValueAxis(double from, int steps, double step, String unit) {

  /** Lines at most; fewer cannot be read from, more hide what is drawn. */
  private static final int STEPS_MAX = 6;

  static final ValueAxis PERCENT = new ValueAxis(0, 5, 20, "%");

  /** Round everything from {@code least} to {@code greatest}. */
  static ValueAxis around(double least, double greatest, String unit) {
    double step = step((greatest - least) / STEPS_MAX, 0.01);
    long first = (long) Math.floor(least / step);
    long last = Math.max(first + 1, (long) Math.ceil(greatest / step));
    return new ValueAxis(first * step, (int) (last - first), step, unit);
  }

  /** Of whole numbers from 0. */
  static ValueAxis countUpTo(double greatest) {
    double step = step(greatest / STEPS_MAX, 1);
    return new ValueAxis(0, Math.max(1, (int) Math.ceil(greatest / step)), step, "");
  }

  private static double step(double atLeast, double least) {
    double ten = least;
    while (true) {
      for (double of : new double[] {1, 2, 5}) {
        if (of * ten >= atLeast) {
          return of * ten;
        }
      }
      ten *= 10;
    }
  }

  double value(int index) {
    return from + index * step;
  }

  /** Where a value lies, 0 at the bottom and 1 at the top. */
  double share(double value) {
    return (value - from) / (steps * step);
  }

  String label(int index) {
    int decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
    return String.format(Locale.ROOT, "%." + decimals + "f", value(index)) + unit;
  }
}
