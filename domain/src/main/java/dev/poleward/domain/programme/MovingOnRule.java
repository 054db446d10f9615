package dev.poleward.domain.programme;

/**
 * When a rung counts as mastered, when the dog steps back, and when one handling is said to lag.
 *
 * <p>The numbers that stand where a document says none are common practice [C].
 */
public sealed interface MovingOnRule {

  /** Misses in a row after which the dog steps back, where a document does not say. */
  int STEP_BACK_AFTER_USUAL = 3;

  /** Share of wrong misfit flags, where a document does not say. */
  double WRONG_MISFIT_USUAL = 0.05;

  /** The rule of a programme that has none. */
  MovingOnRule USUAL =
      new Sequential(
          Sequential.MASTERED_USUAL,
          Sequential.NOT_YET_USUAL,
          Sequential.WRONG_USUAL,
          Sequential.WRONG_USUAL,
          STEP_BACK_AFTER_USUAL,
          WRONG_MISFIT_USUAL);

  /** The rule of a probe that has none of its own: two clean of three. */
  MovingOnRule USUAL_OF_PROBES = new KOfN(2, 3, STEP_BACK_AFTER_USUAL, WRONG_MISFIT_USUAL);

  /** Misses in a row after which the dog steps back, 1 to 20. */
  int stepBackAfter();

  /** Share of misfit flags that may be wrong, above 0 and below 0.5. */
  double wrongMisfit();

  /**
   * So many clean among the last.
   *
   * @param k clean, 1 to {@code n}
   * @param n looked at, up to 100
   */
  record KOfN(int k, int n, int stepBackAfter, double wrongMisfit) implements MovingOnRule {

    /** Where a document does not say. */
    static final int K_USUAL = 8;

    /** Where a document does not say. */
    static final int N_USUAL = 10;
  }

  /**
   * So many clean in a row.
   *
   * @param length 1 to 100
   */
  record Run(int length, int stepBackAfter, double wrongMisfit) implements MovingOnRule {

    /** Where a document does not say. */
    static final int LENGTH_USUAL = 6;
  }

  /**
   * Wald's sequential test of two shares of clean reps.
   *
   * @param mastered the share that is mastered, below 1
   * @param notYet the share that is not, above 0 and below {@code mastered}
   * @param wrongMoveOn how often a dog that is not there yet may be moved on, above 0 and below 0.5
   * @param wrongHold how often one that is may be held back, above 0 and below 0.5
   */
  record Sequential(
      double mastered,
      double notYet,
      double wrongMoveOn,
      double wrongHold,
      int stepBackAfter,
      double wrongMisfit)
      implements MovingOnRule {

    /** Where a document does not say. */
    public static final double MASTERED_USUAL = 0.9;

    /** Where a document does not say. */
    public static final double NOT_YET_USUAL = 0.7;

    /** Where a document does not say. */
    static final double WRONG_USUAL = 0.1;
  }
}
