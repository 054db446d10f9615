package dev.poleward.domain.mastery;

import org.assertj.core.data.Offset;

/** Trials of the literature, and what tests hold against them. */
final class PublishedTrials {

  /** Half a unit in the seventh digit and a little: what R's printed digits can tell apart. */
  private static final double RELATIVE = 1e-6;

  private PublishedTrials() {}

  /**
   * Beetles killed by carbon disulphide, against log10 of the dose: Bliss 1935, as in Dobson, An
   * Introduction to Generalized Linear Models, Table 7.2 [S].
   */
  static Trials beetles() {
    return ofTried(
        new double[] {1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.8610, 1.8839},
        new double[] {59, 60, 62, 56, 63, 59, 62, 60},
        new double[] {6, 13, 18, 28, 52, 53, 61, 60});
  }

  /** Coronary heart disease against age in years: Hosmer and Lemeshow, chdage [T]. */
  static Trials heartDisease() {
    return ofTried(
        new double[] {
          20, 23, 24, 25, 26, 28, 29, 30, 32, 33, 34, 35, 36, 37, 38, 39, 40, 41, 42, 43, 44, 45,
          46, 47, 48, 49, 50, 51, 52, 53, 54, 55, 56, 57, 58, 59, 60, 61, 62, 63, 64, 65, 69
        },
        new double[] {
          1, 1, 1, 2, 2, 2, 1, 6, 2, 2, 5, 2, 3, 3, 2, 2, 2, 2, 4, 3, 4, 2, 2, 3, 3, 3, 2, 1, 2, 2,
          1, 3, 3, 6, 3, 2, 2, 1, 2, 1, 2, 1, 1
        },
        new double[] {
          0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 1, 0, 1, 1, 0, 1, 1, 0, 1, 1, 2, 1, 1, 1, 2, 1, 1, 0, 1, 2,
          1, 2, 3, 4, 2, 2, 1, 1, 2, 1, 1, 1, 1
        });
  }

  /** 1 2 3 4, the first two missed and the others made: separable. */
  static Trials fourSeparable() {
    return ofTried(new double[] {1, 2, 3, 4}, new double[] {1, 1, 1, 1}, new double[] {0, 0, 1, 1});
  }

  /** Five trials at each of 10 to 60, the first three missed and the others made: separable. */
  static Trials thirtySeparable() {
    return ofTried(
        new double[] {10, 20, 30, 40, 50, 60},
        new double[] {5, 5, 5, 5, 5, 5},
        new double[] {0, 0, 0, 5, 5, 5});
  }

  static Trials ofTried(double[] places, double[] tried, double[] made) {
    double[] missed = new double[tried.length];
    for (int i = 0; i < tried.length; i++) {
      missed[i] = tried[i] - made[i];
    }
    return new Trials(places, made, missed);
  }

  /** Within a millionth of a value, or within half its last digit where it has fewer than seven. */
  static Offset<Double> about(double value, int decimals) {
    return Offset.offset(Math.max(RELATIVE * Math.abs(value), 0.51 * Math.pow(10, -decimals)));
  }
}
