package dev.poleward.domain.running;

import java.util.SplittableRandom;

/** Places on a plane, and the thousandths between them. */
final class Plane {

  private Plane() {}

  static double[][] places(int count, SplittableRandom random) {
    double[][] places = new double[count][2];
    for (double[] place : places) {
      place[0] = 10 * random.nextDouble();
      place[1] = 10 * random.nextDouble();
    }
    return places;
  }

  static long[][] between(double[][] places) {
    long[][] between = new long[places.length][places.length];
    for (int one = 0; one < places.length; one++) {
      for (int other = 0; other < places.length; other++) {
        between[one][other] =
            Math.round(
                1_000
                    * Math.hypot(
                        places[one][0] - places[other][0], places[one][1] - places[other][1]));
      }
    }
    return between;
  }
}
