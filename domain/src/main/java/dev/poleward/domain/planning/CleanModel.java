package dev.poleward.domain.planning;

import dev.poleward.domain.mastery.PositiveDefinite;
import java.util.List;

/**
 * A logistic regression of clean reps on {@link Traits}, shrunk to what is expected of any dog:
 * independent normal expectations, the likeliest weights by Newton's method, and their doubt from
 * the curvature there (a Laplace approximation; Gelman et al. 2013, Bayesian Data Analysis, 3rd
 * edition, section 16.2 [M]).
 */
final class CleanModel {

  private static final int STEPS_MAX = 30;
  private static final double SETTLED = 1e-9;

  /** Alike reps, weighted. */
  static final class Group {

    private final SparseVector traits;
    private final double clean;
    private final double missed;

    Group(double[] traits, double clean, double missed) {
      this.traits = SparseVector.of(traits);
      this.clean = clean;
      this.missed = missed;
    }
  }

  private final double[] weights;
  private final PositiveDefinite curvature;

  private CleanModel(double[] weights, PositiveDefinite curvature) {
    this.weights = weights;
    this.curvature = curvature;
  }

  /** What is expected of any dog. */
  static final CleanModel OF_ANY_DOG =
      new CleanModel(
          Traits.expected(),
          curvature(List.of(), Traits.expected(), precision(Traits.deviation())));

  /** Fits groups in a fixed order, at least one. */
  static CleanModel fitted(List<Group> groups) {
    double[] expected = Traits.expected();
    double[] precision = precision(Traits.deviation());
    double[] weights = expected.clone();
    PositiveDefinite root = curvature(groups, weights, precision);
    double height = height(groups, weights, expected, precision);
    for (int step = 0; step < STEPS_MAX; step++) {
      double[] move = root.solved(slope(groups, weights, expected, precision));
      double farthest = 0;
      for (double each : move) {
        farthest = Math.max(farthest, Math.abs(each));
      }
      double[] next = moved(weights, move, 1);
      double reached = height(groups, next, expected, precision);
      // The penalised likelihood is concave, but whole steps from far away may overshoot.
      double part = 1;
      while (reached < height && part > SETTLED) {
        part /= 2;
        next = moved(weights, move, part);
        reached = height(groups, next, expected, precision);
      }
      if (reached < height) {
        break;
      }
      weights = next;
      height = reached;
      root = curvature(groups, weights, precision);
      if (farthest * part < SETTLED) {
        break;
      }
    }
    return new CleanModel(weights, root);
  }

  private static double[] moved(double[] from, double[] move, double part) {
    double[] to = from.clone();
    for (int i = 0; i < to.length; i++) {
      to[i] += part * move[i];
    }
    return to;
  }

  private static double height(
      List<Group> groups, double[] weights, double[] expected, double[] precision) {
    double height = 0;
    for (int i = 0; i < weights.length; i++) {
      double off = weights[i] - expected[i];
      height -= precision[i] * off * off / 2;
    }
    for (Group group : groups) {
      double logit = group.traits.dot(weights);
      double small = StrictMath.log1p(StrictMath.exp(-Math.abs(logit)));
      height -= group.clean * (small + Math.max(0, -logit));
      height -= group.missed * (small + Math.max(0, logit));
    }
    return height;
  }

  private static double[] precision(double[] deviation) {
    double[] precision = new double[deviation.length];
    for (int i = 0; i < deviation.length; i++) {
      precision[i] = 1 / (deviation[i] * deviation[i]);
    }
    return precision;
  }

  private static double[] slope(
      List<Group> groups, double[] weights, double[] expected, double[] precision) {
    double[] slope = new double[weights.length];
    for (int i = 0; i < slope.length; i++) {
      slope[i] = precision[i] * (expected[i] - weights[i]);
    }
    for (Group group : groups) {
      double share = chance(group.traits.dot(weights));
      group.traits.addTo(slope, group.clean - (group.clean + group.missed) * share);
    }
    return slope;
  }

  private static PositiveDefinite curvature(
      List<Group> groups, double[] weights, double[] precision) {
    int size = weights.length;
    double[][] curvature = new double[size][size];
    for (int i = 0; i < size; i++) {
      curvature[i][i] = precision[i];
    }
    for (Group group : groups) {
      double share = chance(group.traits.dot(weights));
      double information = (group.clean + group.missed) * share * (1 - share);
      group.traits.addSquareTo(curvature, information);
    }
    return PositiveDefinite.of(curvature);
  }

  /** The expected logit. */
  double logit(double[] traits) {
    return dot(weights, traits);
  }

  /** The variance of the logit. */
  double variance(double[] traits) {
    return curvature.inverseForm(traits);
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  static double chance(double logit) {
    return 1 / (1 + StrictMath.exp(-logit));
  }
}
