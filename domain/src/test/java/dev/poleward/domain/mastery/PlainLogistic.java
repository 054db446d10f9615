package dev.poleward.domain.mastery;

/**
 * Logistic regression by maximum likelihood, to compare with. Where the trials are separable there
 * is no maximum, and the curve is merely steep.
 */
public final class PlainLogistic {

  private PlainLogistic() {}

  /**
   * The curve of highest likelihood.
   *
   * @param trials at two places at least that have some weight
   */
  public static LogisticFit fit(Trials trials) {
    return Ascent.of(trials, Penalty.NONE).toTheSummit();
  }
}
