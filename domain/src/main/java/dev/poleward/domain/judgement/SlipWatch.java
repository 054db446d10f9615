package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.MovingOnRule;

/**
 * Watches what was solid for a rising share of misses: a Bernoulli CUSUM (Reynolds, Stoumbos 1999,
 * Journal of Quality Technology 31:87) in whole numbers. A clean rep takes 1 from the score, never
 * below 0; a miss adds {@code missWorth − 1}; at the threshold it sounds.
 *
 * @param missWorth clean reps that one miss is worth, from 2: the watch rests at one miss in as
 *     many
 * @param threshold the score at which it sounds, 1 to {@link #THRESHOLD_MAX}
 */
public record SlipWatch(int missWorth, int threshold) {

  /** Greater thresholds would sound too late for any dog. */
  public static final int THRESHOLD_MAX = 2_000;

  /** More than one clean rep in so many cannot be asked of a dog. */
  public static final int MISS_WORTH_MAX = 200;

  /** On average, where nobody says otherwise [C]. */
  public static final double REPS_BETWEEN_FALSE_ALARMS_USUAL = 500;

  /** Whatever is mastered is watched as if no more was missed [C]. */
  private static final double SOLID_MAX = 0.45;

  /** A slip by less takes longer to find out than it matters [C]. */
  private static final double SLIP_MIN = 0.05;

  /** What a programme says in clean reps is in misses only to the last bit but some. */
  private static final double ROUNDING = 1e-9;

  /** The watch over what counts as mastered where a document does not say. */
  public static final SlipWatch USUAL =
      after(MovingOnRule.Sequential.MASTERED_USUAL, MovingOnRule.Sequential.NOT_YET_USUAL);

  /** Refuses what is no watch. */
  public SlipWatch {
    if (missWorth < 2 || missWorth > MISS_WORTH_MAX) {
      throw new IllegalArgumentException("a miss cannot be worth " + missWorth);
    }
    if (threshold < 1 || threshold > THRESHOLD_MAX) {
      throw new IllegalArgumentException("no threshold: " + threshold);
    }
  }

  /**
   * The watch over what was mastered by a rule, at the usual false alarms: for a slip half way back
   * to what the rule calls not yet. Aimed at the whole way, it would find small slips later and
   * deep ones about a rep sooner. A rule that counts names no share that it proves, so that none
   * can be taken from it: it is watched by {@link #USUAL}, whose false alarms are as far apart as
   * said for dogs that miss one in ten, and nearer for all that miss more.
   */
  public static SlipWatch after(MovingOnRule rule) {
    return switch (rule) {
      case MovingOnRule.Sequential it -> after(it.mastered(), it.notYet());
      case MovingOnRule.KOfN it -> USUAL;
      case MovingOnRule.Run it -> USUAL;
    };
  }

  private static SlipWatch after(double mastered, double notYet) {
    double solid = Math.min(SOLID_MAX, 1 - mastered);
    double halfWay = (solid + 1 - notYet) / 2;
    return designed(solid, Math.max(solid + SLIP_MIN, halfWay), REPS_BETWEEN_FALSE_ALARMS_USUAL);
  }

  /**
   * The watch that is quickest for a slip from one share of misses to another, as near as whole
   * numbers come, among those that sound for a solid dog no more often than once in so many reps on
   * average.
   *
   * @param solid share of misses while solid, above 0 and below 0.5
   * @param slipped share of misses to be found out, above {@code solid} and below 1
   * @param repsBetweenFalseAlarms on average, at least 1
   * @return the watch; with {@link #THRESHOLD_MAX} where more was asked for than that gives
   */
  public static SlipWatch designed(double solid, double slipped, double repsBetweenFalseAlarms) {
    if (!(0 < solid && solid < 0.5 && solid < slipped && slipped < 1)) {
      throw new IllegalArgumentException("no two shares: " + solid + " and " + slipped);
    }
    int worth = missWorth(solid, slipped);
    for (int threshold = 1; threshold < THRESHOLD_MAX; threshold++) {
      SlipWatch watch = new SlipWatch(worth, threshold);
      if (watch.repsToAlarm(solid) >= repsBetweenFalseAlarms) {
        return watch;
      }
    }
    return new SlipWatch(worth, THRESHOLD_MAX);
  }

  /** The likelihood ratio of a miss, in clean reps, rounded; it must still rest above solid. */
  private static int missWorth(double solid, double slipped) {
    long nearest = Math.round(1 / restAt(solid, slipped));
    long most = Math.min(MISS_WORTH_MAX, (long) Math.ceil(1 / solid - ROUNDING) - 1);
    return (int) Math.max(2, Math.min(nearest, most));
  }

  /** The share of misses at which the log of the likelihood ratio goes nowhere on average. */
  static double restAt(double solid, double slipped) {
    double ofClean = -StrictMath.log((1 - slipped) / (1 - solid));
    double ofMiss = StrictMath.log(slipped * (1 - solid) / (solid * (1 - slipped)));
    return ofClean / ofMiss;
  }

  /** Before the first rep. */
  public CusumScore begun() {
    return new Cusum(1, threshold).begun();
  }

  /** With one more rep. */
  public CusumScore seen(CusumScore score, boolean clean) {
    return score.with(clean ? 0 : missWorth);
  }

  /**
   * How many reps it takes on average from a score of 0 until it sounds, exactly: the scores are a
   * Markov chain that goes down by one or up by {@code missWorth − 1}.
   *
   * @param missed share of misses, above 0
   */
  public double repsToAlarm(double missed) {
    // From a score it takes rest + part · (what it takes from the next lower score).
    double[] rest = new double[threshold];
    double[] part = new double[threshold];
    for (int score = threshold - 1; score >= 0; score--) {
      // After a miss: rest + part · (what it takes from here); nothing once it has sounded.
      double restOfMiss = 0;
      double partOfMiss = score + missWorth - 1 < threshold ? 1 : 0;
      for (int above = score + missWorth - 1; partOfMiss > 0 && above > score; above--) {
        restOfMiss += partOfMiss * rest[above];
        partOfMiss *= part[above];
      }
      // At 0 a clean rep leads back here.
      double back = score == 0 ? missed * (1 - partOfMiss) : 1 - missed * partOfMiss;
      rest[score] = (1 + missed * restOfMiss) / back;
      part[score] = score == 0 ? 0 : (1 - missed) / back;
    }
    return rest[0];
  }
}
