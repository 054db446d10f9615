package dev.poleward.domain.outlook;

import dev.poleward.domain.mastery.PositiveDefinite;
import java.util.List;
import java.util.Optional;

/**
 * Finds the likeliest traits of a dog, given its record and what is expected of such dogs (maximum
 * a posteriori), by Fisher scoring: steps by the slope of the height and the information in what
 * was expected of each rep, halved for as long as they lead down. Slopes are differences.
 * Deterministic, and ends after a bounded number of steps.
 */
final class TraitFit {

  private static final int STEPS_MAX = 12;
  private static final int HALVINGS_MAX = 8;

  /**
   * How much of a rep counts [C]. What is no trait is taken to be the ordinary dog's and is not, so
   * that reps hold less than they seem to; with all of it limits of 80% held 7 times in 10.
   */
  static final double COUNTS = 0.7;

  /** Units between the two places of a difference. */
  private static final double APART = 0.02;

  /** A step of any trait. */
  private static final double STEP_MAX = 1.5;

  /** Nobody is further from the middle. */
  static final double FARTHEST = 4;

  /** The gain still expected at which we have arrived, in log likelihood. */
  private static final double GAIN_LEFT = 1e-3;

  /** Where the top is and how sharp it is. Immutable. */
  static final class Top {

    private final Place place;
    private final PositiveDefinite curvature;

    private Top(Place place, PositiveDefinite curvature) {
      this.place = place;
      this.curvature = curvature;
    }

    /** The likeliest traits; not to be changed. */
    double[] traits() {
      return place.traits;
    }

    /** Of the height there, expectation included. */
    PositiveDefinite curvature() {
      return curvature;
    }

    /** Of the record. */
    double logLikelihood() {
      return place.logLikelihood;
    }
  }

  /** A dog that was tried. */
  private static final class Place {

    private final double[] traits;
    private final double[] expected;
    private final double logLikelihood;
    private final double height;

    private Place(double[] traits, double[] expected, double logLikelihood, double height) {
      this.traits = traits;
      this.expected = expected;
      this.logLikelihood = logLikelihood;
      this.height = height;
    }
  }

  private final Replay replay;
  private final List<Normal> prior;

  private TraitFit(Replay replay, List<Normal> prior) {
    this.replay = replay;
    this.prior = prior;
  }

  /**
   * The top.
   *
   * @param prior of each trait
   */
  static Top of(Replay replay, List<Normal> prior) {
    return new TraitFit(replay, prior).top(STEPS_MAX);
  }

  /** About the top: as far as so many steps lead. */
  static Top near(Replay replay, List<Normal> prior, int steps) {
    return new TraitFit(replay, prior).top(steps);
  }

  private Top top(int stepsMax) {
    Place here = at(prior.stream().mapToDouble(Normal::mean).toArray());
    for (int step = 0; ; step++) {
      double[][] slopes = slopes(here);
      PositiveDefinite curvature = PositiveDefinite.of(information(here, slopes));
      double[] uphill = uphill(here, slopes);
      double[] by = curvature.solved(uphill);
      Optional<Place> next =
          step < stepsMax && gain(uphill, by) > GAIN_LEFT ? higher(here, by) : Optional.empty();
      if (next.isEmpty()) {
        return new Top(here, curvature);
      }
      here = next.get();
    }
  }

  private static double gain(double[] uphill, double[] by) {
    double gain = 0;
    for (int i = 0; i < by.length; i++) {
      gain += uphill[i] * by[i];
    }
    return gain;
  }

  private Optional<Place> higher(Place here, double[] by) {
    double most = STEP_MAX;
    for (double each : by) {
      most = Math.max(most, Math.abs(each));
    }
    double part = STEP_MAX / most;
    for (int halving = 0; halving < HALVINGS_MAX; halving++) {
      double[] traits = here.traits.clone();
      for (int i = 0; i < traits.length; i++) {
        traits[i] = Math.clamp(traits[i] + part * by[i], -FARTHEST, FARTHEST);
      }
      Place there = at(traits);
      if (there.height > here.height) {
        return Optional.of(there);
      }
      part /= 2;
    }
    return Optional.empty();
  }

  private Place at(double[] traits) {
    double[] expected = replay.expected(Tempers.of(traits));
    double logLikelihood = replay.logLikelihood(expected);
    double height = COUNTS * logLikelihood;
    for (int i = 0; i < traits.length; i++) {
      height += prior.get(i).logHeight(traits[i]);
    }
    return new Place(traits, expected, logLikelihood, height);
  }

  /** By trait: how each expectation changes with it. */
  private double[][] slopes(Place here) {
    double[][] slopes = new double[Trait.COUNT][];
    for (int i = 0; i < Trait.COUNT; i++) {
      double[] traits = here.traits.clone();
      // Towards the middle, where there is always room.
      double apart = traits[i] > 0 ? -APART : APART;
      traits[i] += apart;
      double[] there = replay.expected(Tempers.of(traits));
      for (int at = 0; at < there.length; at++) {
        there[at] = (there[at] - here.expected[at]) / apart;
      }
      slopes[i] = there;
    }
    return slopes;
  }

  private double[] uphill(Place here, double[][] slopes) {
    double[] uphill = new double[Trait.COUNT];
    for (int i = 0; i < Trait.COUNT; i++) {
      double sum = (prior.get(i).mean() - here.traits[i]) / prior.get(i).variance();
      for (int at = 0; at < replay.size(); at++) {
        double chance = here.expected[at];
        double surprise = (replay.yes(at) ? 1 : 0) - chance;
        sum += COUNTS * slopes[i][at] * surprise / (chance * (1 - chance));
      }
      uphill[i] = sum;
    }
    return uphill;
  }

  private double[][] information(Place here, double[][] slopes) {
    double[][] information = new double[Trait.COUNT][Trait.COUNT];
    for (int i = 0; i < Trait.COUNT; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = i == j ? 1 / prior.get(i).variance() : 0;
        for (int at = 0; at < replay.size(); at++) {
          double chance = here.expected[at];
          sum += COUNTS * slopes[i][at] * slopes[j][at] / (chance * (1 - chance));
        }
        information[i][j] = sum;
        information[j][i] = sum;
      }
    }
    return information;
  }
}
