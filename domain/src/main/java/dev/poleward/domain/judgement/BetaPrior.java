package dev.poleward.domain.judgement;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import java.util.List;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * What is expected of a share before anything is seen, or after: a beta distribution, as after so
 * many clean and missed reps.
 *
 * @param clean above 0; need not be whole
 * @param missed above 0
 */
public record BetaPrior(double clean, double missed) {

  /** Where nothing is known: any share is as likely as any other. */
  public static final BetaPrior UNKNOWN = new BetaPrior(1, 1);

  /** Dogs of a club that seem all alike count as so many reps of each other. */
  public static final double REPS_MAX = 10_000;

  /** Dogs of a club that have nothing in common count as so many. */
  public static final double REPS_MIN = 0.1;

  /** Dogs below which a club says nothing of how its dogs differ. */
  public static final int DOGS_MIN = 4;

  /** Refuses what is no distribution. */
  public BetaPrior {
    if (!(clean > 0 && missed > 0 && clean + missed < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("no distribution: " + clean + " and " + missed);
    }
  }

  /** Of that mean and that number of reps, both as far as can be. */
  static BetaPrior of(double mean, double reps) {
    double within = Math.max(REPS_MIN, Math.min(REPS_MAX, reps));
    return new BetaPrior(mean * within, (1 - mean) * within);
  }

  /**
   * From the dogs of a club, so that a dog's own reps weigh as in the estimate of James and Stein
   * (Efron, Morris 1975, JASA 70:311): what its dogs differ by, less what chance would make of dogs
   * that are all alike. Dogs with different numbers of reps count as if each had the harmonic mean.
   *
   * @param dogs at least {@link #DOGS_MIN} with reps; else {@link #UNKNOWN}
   */
  public static BetaPrior byShrinkage(List<Tally> dogs) {
    List<Tally> seen = dogs.stream().filter(dog -> dog.of() > 0).toList();
    if (seen.size() < DOGS_MIN) {
      return UNKNOWN;
    }
    double mean = mean(seen);
    double inverse = 0;
    double spread = 0;
    for (Tally dog : seen) {
      inverse += 1.0 / dog.of();
      spread += (dog.share() - mean) * (dog.share() - mean);
    }
    double each = seen.size() / inverse;
    double own = 1 - (seen.size() - 3) * mean * (1 - mean) / each / spread;
    return own > 0 ? of(mean, each * (1 - own) / own) : of(mean, REPS_MAX);
  }

  /**
   * The likeliest from the dogs of a club, whatever the numbers of their reps.
   *
   * @param dogs at least {@link #DOGS_MIN} with reps; else {@link #UNKNOWN}
   */
  public static BetaPrior likeliest(List<Tally> dogs) {
    List<Tally> seen = dogs.stream().filter(dog -> dog.of() > 0).toList();
    if (seen.size() < DOGS_MIN) {
      return UNKNOWN;
    }
    double mean = mean(seen);
    if (mean == 0 || mean == 1) {
      // Nobody has missed, or nobody was clean: half a rep speaks for the other side.
      int reps = seen.stream().mapToInt(Tally::of).sum();
      return of((mean * reps + 0.5) / (reps + 1), REPS_MAX);
    }
    BetaPrior top = new BetaBinomialHill(seen).top(byShrinkage(seen));
    return top.reps() < REPS_MAX ? top : of(mean, REPS_MAX);
  }

  /** Of all reps of all dogs. */
  private static double mean(List<Tally> dogs) {
    double clean = 0;
    double of = 0;
    for (Tally dog : dogs) {
      clean += dog.clean();
      of += dog.of();
    }
    return clean / of;
  }

  /** After seeing a dog's reps. */
  public BetaPrior after(Tally dog) {
    return new BetaPrior(clean + dog.clean(), missed + dog.missed());
  }

  /** So many reps it is worth. */
  public double reps() {
    return clean + missed;
  }

  /** The expected share. */
  public double mean() {
    return clean / reps();
  }

  /** How far the share is expected to be from its mean. */
  public double deviation() {
    return Math.sqrt(mean() * (1 - mean()) / (reps() + 1));
  }

  /** The expected share with equal-tailed limits. */
  public Estimate estimate(Confidence confidence) {
    BetaDistribution distribution = BetaDistribution.of(clean, missed);
    double tail = (1 - confidence.level()) / 2;
    return new Estimate(
        mean(),
        distribution.inverseCumulativeProbability(tail),
        distribution.inverseSurvivalProbability(tail));
  }
}
