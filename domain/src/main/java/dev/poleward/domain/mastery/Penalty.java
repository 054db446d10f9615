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
    double trials(double leverage) {
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
    double trials(double leverage) {
      return leverage;
    }
  };

  /**
   * The penalty itself.
   *
   * @param information of the curve's height at its centre
   * @param spread the information of the slope; the two multiply to the determinant
   */
  abstract double value(double information, double spread);

  /**
   * To how many trials more at a place it comes, half of them made: the gradient of the penalty is
   * that of a log likelihood of these.
   *
   * @param leverage of the place
   */
  abstract double trials(double leverage);
}
