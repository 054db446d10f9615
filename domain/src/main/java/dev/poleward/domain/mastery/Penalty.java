package dev.poleward.domain.mastery;

/** What is added to the log likelihood of a logistic curve. */
enum Penalty {
  /** Nothing: maximum likelihood, which runs away where the trials are separable. */
  NONE {
    @Override
    double value(double information, double spread) {
      return 0;
    }

    @Override
    double pull(double leverage, double probability) {
      return 0;
    }
  },
  /**
   * Half the logarithm of the information's determinant, Jeffreys' prior: finite always, and freed
   * of the first-order bias (Firth 1993, Biometrika 80:27).
   */
  FIRTH {
    @Override
    double value(double information, double spread) {
      return (StrictMath.log(information) + StrictMath.log(spread)) / 2;
    }

    @Override
    double pull(double leverage, double probability) {
      return leverage * (0.5 - probability);
    }
  };

  /**
   * The penalty itself.
   *
   * @param information of the curve's height at its centre
   * @param spread the information of the slope; the two multiply to the determinant
   */
  abstract double value(double information, double spread);

  /** By how much it moves what was made at a place, in weight. */
  abstract double pull(double leverage, double probability);
}
