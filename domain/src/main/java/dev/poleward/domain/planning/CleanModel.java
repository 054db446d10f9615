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
  private static final double SETTLED = 1e-7;

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

    double reps() {
      return clean + missed;
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
          Point.at(Traits.expected(), List.of(), Traits.expected(), precision(Traits.deviation()))
              .curvature(List.of(), precision(Traits.deviation())));

  /** Fits groups in a fixed order, at least one. */
  static CleanModel fitted(List<Group> groups) {
    double[] expected = Traits.expected();
    double[] precision = precision(Traits.deviation());
    Point here = Point.at(expected.clone(), groups, expected, precision);
    PositiveDefinite root = here.curvature(groups, precision);
    for (int step = 0; step < STEPS_MAX; step++) {
      double[] move = root.solved(here.slope(groups, expected, precision));
      double farthest = 0;
      for (double each : move) {
        farthest = Math.max(farthest, Math.abs(each));
      }
      Point next = Point.at(moved(here.weights, move, 1), groups, expected, precision);
      // The penalised likelihood is concave, but whole steps from far away may overshoot.
      double part = 1;
      while (next.height < here.height && part > SETTLED) {
        part /= 2;
        next = Point.at(moved(here.weights, move, part), groups, expected, precision);
      }
      if (next.height < here.height) {
        break;
      }
      here = next;
      root = here.curvature(groups, precision);
      if (farthest * part < SETTLED) {
        break;
      }
    }
    return new CleanModel(here.weights, root);
  }

  private static double[] moved(double[] from, double[] move, double part) {
    double[] to = from.clone();
    for (int i = 0; i < to.length; i++) {
      to[i] += part * move[i];
    }
    return to;
  }

  private static double[] precision(double[] deviation) {
    double[] precision = new double[deviation.length];
    for (int i = 0; i < deviation.length; i++) {
      precision[i] = 1 / (deviation[i] * deviation[i]);
    }
    return precision;
  }

  /** What follows from some weights: every group's share, and how likely all of it is. */
  private static final class Point {

    private final double[] weights;
    private final double[] shares;
    private final double height;

    private Point(double[] weights, double[] shares, double height) {
      this.weights = weights;
      this.shares = shares;
      this.height = height;
    }

    static Point at(double[] weights, List<Group> groups, double[] expected, double[] precision) {
      double height = 0;
      for (int i = 0; i < weights.length; i++) {
        double off = weights[i] - expected[i];
        height -= precision[i] * off * off / 2;
      }
      double[] shares = new double[groups.size()];
      for (int i = 0; i < shares.length; i++) {
        Group group = groups.get(i);
        double logit = group.traits.dot(weights);
        double odds = StrictMath.exp(-Math.abs(logit));
        double small = StrictMath.log1p(odds);
        height -= group.clean * (small + Math.max(0, -logit));
        height -= group.missed * (small + Math.max(0, logit));
        shares[i] = (logit < 0 ? odds : 1) / (1 + odds);
      }
      return new Point(weights, shares, height);
    }

    double[] slope(List<Group> groups, double[] expected, double[] precision) {
      double[] slope = new double[weights.length];
      for (int i = 0; i < slope.length; i++) {
        slope[i] = precision[i] * (expected[i] - weights[i]);
      }
      for (int i = 0; i < shares.length; i++) {
        Group group = groups.get(i);
        group.traits.addTo(slope, group.clean - group.reps() * shares[i]);
      }
      return slope;
    }

    PositiveDefinite curvature(List<Group> groups, double[] precision) {
      double[][] curvature = new double[precision.length][precision.length];
      for (int i = 0; i < precision.length; i++) {
        curvature[i][i] = precision[i];
      }
      for (int i = 0; i < shares.length; i++) {
        Group group = groups.get(i);
        group.traits.addSquareTo(curvature, group.reps() * shares[i] * (1 - shares[i]));
      }
      return PositiveDefinite.of(curvature);
    }
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
