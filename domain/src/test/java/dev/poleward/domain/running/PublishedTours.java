package dev.poleward.domain.running;

/**
 * Round trips with known shortest lengths, from the public library of travelling-salesman instances
 * (TSPLIB): coordinates, matrix and optima as {@code burma14} 3323, {@code ulysses16} 6859 and
 * {@code gr17} 2085 [T]; found again here by another program [R].
 */
final class PublishedTours {

  static final double[][] BURMA_14 = {
    {16.47, 96.10}, {16.47, 94.44}, {20.09, 92.54}, {22.39, 93.37}, {25.23, 97.24},
    {22.00, 96.05}, {20.47, 97.02}, {17.20, 96.29}, {16.30, 97.38}, {14.05, 98.12},
    {16.53, 97.38}, {21.52, 95.59}, {19.41, 97.13}, {20.09, 94.55}
  };

  static final double[][] ULYSSES_16 = {
    {38.24, 20.42}, {39.57, 26.15}, {40.56, 25.32}, {36.26, 23.12}, {33.48, 10.54},
    {37.56, 12.19}, {38.42, 13.11}, {37.52, 20.44}, {41.23, 9.10}, {41.17, 13.05},
    {36.08, -5.21}, {38.47, 15.13}, {38.15, 15.35}, {37.51, 15.17}, {35.49, 14.32},
    {39.36, 19.56}
  };

  private static final int[] GR_17 = {
    0, 633, 0, 257, 390, 0, 91, 661, 228, 0, 412, 227, 169, 383, 0, 150, 488, 112, 120, 267, 0, 80,
    572, 196, 77, 351, 63, 0, 134, 530, 154, 105, 309, 34, 29, 0, 259, 555, 372, 175, 338, 264, 232,
    249, 0, 505, 289, 262, 476, 196, 360, 444, 402, 495, 0, 353, 282, 110, 324, 61, 208, 292, 250,
    352, 154, 0, 324, 638, 437, 240, 421, 329, 297, 314, 95, 578, 435, 0, 70, 567, 191, 27, 346, 83,
    47, 68, 189, 439, 287, 254, 0, 211, 466, 74, 182, 243, 105, 150, 108, 326, 336, 184, 391, 145,
    0, 268, 420, 53, 239, 199, 123, 207, 165, 383, 240, 140, 448, 202, 57, 0, 246, 745, 472, 237,
    528, 364, 332, 349, 202, 685, 542, 157, 289, 426, 483, 0, 121, 518, 142, 84, 297, 35, 29, 36,
    236, 390, 238, 301, 55, 96, 153, 336, 0
  };

  private PublishedTours() {}

  static long[][] gr17() {
    long[][] between = new long[17][17];
    int at = 0;
    for (int one = 0; one < between.length; one++) {
      for (int other = 0; other <= one; other++) {
        between[one][other] = GR_17[at];
        between[other][one] = GR_17[at++];
      }
    }
    return between;
  }

  /** Distances on the globe as the library defines them. */
  static long[][] onGlobe(double[][] places) {
    long[][] between = new long[places.length][places.length];
    for (int one = 0; one < places.length; one++) {
      for (int other = 0; other < places.length; other++) {
        between[one][other] = one == other ? 0 : onGlobe(places[one], places[other]);
      }
    }
    return between;
  }

  private static long onGlobe(double[] one, double[] other) {
    double q1 = Math.cos(radians(one[1]) - radians(other[1]));
    double q2 = Math.cos(radians(one[0]) - radians(other[0]));
    double q3 = Math.cos(radians(one[0]) + radians(other[0]));
    return (long) (6378.388 * Math.acos(0.5 * ((1 + q1) * q2 - (1 - q1) * q3)) + 1);
  }

  /** Degrees and minutes, the library's own pi; the degrees are cut off and not rounded. */
  private static double radians(double written) {
    double degrees = (long) written;
    return 3.141592 * (degrees + 5 * (written - degrees) / 3) / 180;
  }
}
