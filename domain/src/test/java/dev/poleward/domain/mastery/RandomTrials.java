package dev.poleward.domain.mastery;

import java.util.Random;

/** Trials made up at random, from a few to many, from fair to hopeless. */
final class RandomTrials {

  private RandomTrials() {}

  /** At 2 to 12 sizes of angle, with weights from a hundredth to thousands. */
  static Trials any(Random random) {
    int size = 2 + random.nextInt(11);
    double[] places = new double[size];
    double[] made = new double[size];
    double[] missed = new double[size];
    double heaviest = Math.pow(10, random.nextInt(5) - 1);
    for (int i = 0; i < size; i++) {
      places[i] = (i == 0 ? 0 : places[i - 1]) + 1 + random.nextInt(14);
      double weight = 0.01 + heaviest * random.nextDouble();
      double share =
          switch (random.nextInt(3)) {
            case 0 -> 0;
            case 1 -> 1;
            default -> random.nextDouble();
          };
      made[i] = weight * share;
      missed[i] = share == 1 ? 0 : weight - made[i];
    }
    return new Trials(places, made, missed);
  }

  /** What a dog of constant skill does: {@code tries} at each place. */
  static Trials ofDog(Random random, double[] places, int tries, Curve chance) {
    double[] made = new double[places.length];
    double[] missed = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      for (int rep = 0; rep < tries; rep++) {
        if (random.nextDouble() < chance.at(places[i])) {
          made[i]++;
        } else {
          missed[i]++;
        }
      }
    }
    return new Trials(places, made, missed);
  }

  /** The chance of success at a size of angle. */
  interface Curve {
    double at(double place);
  }
}
