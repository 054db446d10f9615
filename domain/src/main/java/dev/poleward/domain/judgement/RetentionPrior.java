package dev.poleward.domain.judgement;

import java.util.List;

/**
 * What is expected of how a dog forgets before anything is seen of it: normal distributions of the
 * two numbers of a {@link Retention}.
 *
 * @param logitAtOnce logit of the expected share of clean first reps after no time at all
 * @param fall by which the logit falls each time the days away, and one, grow e-fold
 * @param deviationAtOnce by which dogs differ, above 0
 * @param deviationOfFall likewise
 */
public record RetentionPrior(
    double logitAtOnce, double fall, double deviationAtOnce, double deviationOfFall) {

  /**
   * Where nothing is known: 0.9 at once, 0.8 after 30 days; of dogs, two in three lie between 0.77
   * and 0.96 at once [C].
   */
  public static final RetentionPrior USUAL = through(0.9, 0.8, 30);

  private static final double DEVIATION_AT_ONCE = 1;
  private static final double DEVIATION_OF_FALL = 0.25;

  private static RetentionPrior through(double atOnce, double later, double days) {
    double logitAtOnce = Retention.logit(atOnce);
    return new RetentionPrior(
        logitAtOnce,
        (logitAtOnce - Retention.logit(later)) / StrictMath.log1p(days),
        DEVIATION_AT_ONCE,
        DEVIATION_OF_FALL);
  }

  /**
   * What the dogs of a club say, where they say anything: their returns together move the usual
   * expectation; how far dogs differ stays as usual.
   *
   * @param ofAllDogs in a fixed order; guests left out
   */
  public static RetentionPrior ofClub(List<Return> ofAllDogs) {
    Retention club = Retention.fitted(ofAllDogs, USUAL);
    return new RetentionPrior(
        club.logitAtOnce(), club.fall(), DEVIATION_AT_ONCE, DEVIATION_OF_FALL);
  }
}
