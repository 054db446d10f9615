package dev.poleward.load.outlook;

import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.outlook.FittedLearner;
import dev.poleward.domain.outlook.Normal;
import dev.poleward.domain.outlook.Schooling;
import dev.poleward.domain.outlook.Trait;

/**
 * How well the quickness of dogs is found again.
 *
 * @param correlation between what was found and the truth
 * @param held share of dogs whose truth lay within the 80% limits
 * @param deviation what was held of a dog, on average
 * @param reps of a record, on average
 */
public record Recovered(double correlation, double held, double deviation, double reps) {

  /** Half the width of 80% limits, in deviations. */
  private static final double WITHIN = 1.2815515655446004;

  /** Fits so many dogs, each drawn towards what is known of its club. */
  public static Recovered of(Kennel kennel, Clubs clubs, int dogs, int weeks, long seed) {
    double[] found = new double[dogs];
    double[] truth = new double[dogs];
    int held = 0;
    double deviation = 0;
    double reps = 0;
    for (int dog = 0; dog < dogs; dog++) {
      Schooling schooling = kennel.dog(seed + dog, weeks);
      Normal quickness = FittedLearner.of(schooling.reps(), clubs.of(dog)).trait(Trait.QUICKNESS);
      truth[dog] = quickness(schooling.dog().temper());
      found[dog] = quickness.mean();
      held += Math.abs(found[dog] - truth[dog]) <= WITHIN * quickness.deviation() ? 1 : 0;
      deviation += quickness.deviation();
      reps += schooling.reps().size();
    }
    return new Recovered(
        correlation(found, truth), (double) held / dogs, deviation / dogs, reps / dogs);
  }

  /** Of finding entries, both sides alike, in the units of the trait. */
  private static double quickness(Temper temper) {
    double rate = (temper.entry().pole().rate() + temper.entry().gap().rate()) / 2;
    double middle = Population.CLUB.middle().entry().pole().rate();
    return Math.log(rate / middle) / Math.log(Trait.QUICKNESS.factorOf(1));
  }

  private static double correlation(double[] one, double[] other) {
    double meanOne = mean(one);
    double meanOther = mean(other);
    double both = 0;
    double squares = 0;
    double otherSquares = 0;
    for (int i = 0; i < one.length; i++) {
      both += (one[i] - meanOne) * (other[i] - meanOther);
      squares += (one[i] - meanOne) * (one[i] - meanOne);
      otherSquares += (other[i] - meanOther) * (other[i] - meanOther);
    }
    return both / Math.sqrt(squares * otherSquares);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
