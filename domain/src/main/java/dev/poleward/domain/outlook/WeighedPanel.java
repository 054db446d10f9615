package dev.poleward.domain.outlook;

import dev.poleward.domain.learner.SimulatedDog;
import java.util.Arrays;
import java.util.List;

/**
 * A panel, each dog weighed by how likely it would have run so. Every place counts alike before the
 * first rep, however many dogs stand there. Immutable.
 */
final class WeighedPanel {

  /** How often something else decides than the model knows of, either way [C]. */
  private static final double LAPSE = 0.02;

  private final Panel panel;
  private final double[][] weights;

  private WeighedPanel(Panel panel, double[][] weights) {
    this.panel = panel;
    this.weights = weights;
  }

  static WeighedPanel of(Panel panel, List<SeenRep> reps) {
    double[][] weights = new double[panel.places()][];
    double sum = 0;
    for (int place = 0; place < weights.length; place++) {
      List<SimulatedDog> dogs = panel.dogs(place);
      weights[place] = new double[dogs.size()];
      for (int dog = 0; dog < weights[place].length; dog++) {
        weights[place][dog] = likelihood(dogs.get(dog), reps) / dogs.size();
        sum += weights[place][dog];
      }
    }
    for (double[] each : weights) {
      for (int dog = 0; dog < each.length; dog++) {
        each[dog] /= sum;
      }
    }
    return new WeighedPanel(panel, weights);
  }

  /** Of a dog as it stands: a few reps teach little, and tire no one. */
  private static double likelihood(SimulatedDog dog, List<SeenRep> reps) {
    double likelihood = 1;
    for (SeenRep rep : reps) {
      double clean = lapsing(dog.chanceOfClean(rep.task()));
      double made = lapsing(dog.chanceOfEntry(rep.task()));
      if (rep.isClean()) {
        likelihood *= clean;
      } else if (rep.entryMade()) {
        likelihood *= Math.max(LAPSE, made - clean);
      } else {
        likelihood *= 1 - made;
      }
    }
    return likelihood;
  }

  private static double lapsing(double chance) {
    return LAPSE + (1 - 2 * LAPSE) * chance;
  }

  /** The chance of each place; they sum to 1. */
  double[] places() {
    return Arrays.stream(weights).mapToDouble(WeighedPanel::sum).toArray();
  }

  /** The chance that the first drill of a pool is clean. */
  double clean(int pool) {
    return sum(cleanOfPlaces(pool));
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double each : values) {
      sum += each;
    }
    return sum;
  }

  /** For each place the chance that the dog stands there and is clean. */
  private double[] cleanOfPlaces(int pool) {
    double[] clean = new double[weights.length];
    for (int place = 0; place < clean.length; place++) {
      for (int dog = 0; dog < weights[place].length; dog++) {
        clean[place] += weights[place][dog] * lapsing(panel.clean(pool, place, dog));
      }
    }
    return clean;
  }

  /** How much the first drill of a pool would tell of the place (mutual information, in nats). */
  double information(int pool) {
    double[] places = places();
    double[] clean = cleanOfPlaces(pool);
    double all = sum(clean);
    double information = 0;
    for (int place = 0; place < places.length; place++) {
      information += part(clean[place], all, places[place]);
      information += part(places[place] - clean[place], 1 - all, places[place]);
    }
    return information;
  }

  private static double part(double both, double one, double other) {
    return both > 0 ? both * StrictMath.log(both / (one * other)) : 0;
  }
}
