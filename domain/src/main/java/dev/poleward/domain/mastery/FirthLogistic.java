package dev.poleward.domain.mastery;

/**
 * Logistic regression with Firth's penalty (Firth 1993, Biometrika 80:27; Heinze and Schemper 2002,
 * Statistics in Medicine 21:2409): finite however the trials fall, as long as there are two places.
 * A weight counts as that much of a trial.
 */
public final class FirthLogistic {

  private FirthLogistic() {}

  /**
   * The curve of highest penalised likelihood. The same trials give the same bits.
   *
   * @param trials at two places at least that have some weight
   */
  public static LogisticFit fit(Trials trials) {
    return Ascent.of(trials, Penalty.FIRTH).toTheSummit();
  }
}
