package dev.poleward.domain.mastery;

/**
 * The penalised log likelihood of trials over all logistic curves, seen from one curve at a time:
 * {@link #stand} goes to a curve, the rest says how high it is there and where it rises. For one
 * thread.
 *
 * <p>The curve's height is taken at its {@link #centre}, where height and slope carry separate
 * information. So the information has no other entries, its determinant is a product, and nothing
 * is lost to cancellation however far from 0 the places lie.
 */
final class LikelihoodSurface {

  private final Trials trials;
  private final Penalty penalty;
  private final double[] probabilities;
  private final double[] variances;

  private double intercept;
  private double slope;
  private double value;
  private double information;
  private double centre;
  private double spread;
  private double scoreOfHeight;
  private double scoreOfSlope;

  LikelihoodSurface(Trials trials, Penalty penalty) {
    this.trials = trials;
    this.penalty = penalty;
    this.probabilities = new double[trials.size()];
    this.variances = new double[trials.size()];
  }

  /**
   * Goes to a curve.
   *
   * @return how high the surface is there; not finite where the curve is beyond all numbers
   */
  double stand(double atIntercept, double atSlope) {
    intercept = atIntercept;
    slope = atSlope;
    double logLikelihood = 0;
    information = 0;
    double weighted = 0;
    for (int i = 0; i < probabilities.length; i++) {
      double height = intercept + slope * trials.place(i);
      double small = StrictMath.exp(-Math.abs(height));
      double likely = 1 / (1 + small);
      double unlikely = small * likely;
      double surprises = height >= 0 ? trials.missed(i) : trials.made(i);
      probabilities[i] = height >= 0 ? likely : unlikely;
      variances[i] = trials.weight(i) * likely * unlikely;
      logLikelihood -= surprises * Math.abs(height) + trials.weight(i) * StrictMath.log1p(small);
      information += variances[i];
      weighted += variances[i] * trials.place(i);
    }
    centre = weighted / information;
    spread = 0;
    for (int i = 0; i < variances.length; i++) {
      double arm = trials.place(i) - centre;
      spread += variances[i] * arm * arm;
    }
    value = logLikelihood + penalty.value(information, spread);
    score();
    return value;
  }

  private void score() {
    scoreOfHeight = 0;
    scoreOfSlope = 0;
    for (int i = 0; i < probabilities.length; i++) {
      double arm = trials.place(i) - centre;
      double probability = probabilities[i];
      double leverage = variances[i] * (1 / information + arm * arm / spread);
      double residual =
          trials.made(i) * (1 - probability)
              - trials.missed(i) * probability
              + penalty.pull(leverage, probability);
      scoreOfHeight += residual;
      scoreOfSlope += residual * arm;
    }
  }

  double intercept() {
    return intercept;
  }

  double slope() {
    return slope;
  }

  /** How high it is here. */
  double value() {
    return value;
  }

  /** By how much it rises with the height of the curve. */
  double scoreOfHeight() {
    return scoreOfHeight;
  }

  /** By how much it rises with the slope about the centre. */
  double scoreOfSlope() {
    return scoreOfSlope;
  }

  /** The expected information of the curve's height at the centre. */
  double information() {
    return information;
  }

  /** The mean place, each as heavy as it informs. */
  double centre() {
    return centre;
  }

  /** The expected information of the slope about the centre. */
  double spread() {
    return spread;
  }
}
