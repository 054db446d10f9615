package dev.poleward.domain.mastery;

/**
 * The penalised log likelihood of trials over all logistic curves, seen from one curve at a time:
 * {@link #stand} goes to a curve, the rest says how high it is there, where it rises and how it
 * bends. For one thread.
 *
 * <p>Heights of the curve are taken at a centre, where height and slope carry separate information.
 * So the information has no other entries, its determinant is a product, and nothing is lost to
 * cancellation however far from 0 the places lie.
 */
final class LikelihoodSurface {

  private final Trials trials;
  private final Penalty penalty;
  private final double[] probabilities;
  private final double[] residuals;
  private final Moments information;
  private final Moments bend;

  private double intercept;
  private double slope;
  private double value;
  private double scoreOfHeight;
  private double scoreOfSlope;

  LikelihoodSurface(Trials trials, Penalty penalty) {
    this.trials = trials;
    this.penalty = penalty;
    this.probabilities = new double[trials.size()];
    this.residuals = new double[trials.size()];
    this.information = new Moments(trials);
    this.bend = new Moments(trials);
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
    for (int i = 0; i < trials.size(); i++) {
      double height = intercept + slope * trials.place(i);
      double small = StrictMath.exp(-Math.abs(height));
      double likely = 1 / (1 + small);
      double unlikely = small * likely;
      double surprises = height >= 0 ? trials.missed(i) : trials.made(i);
      logLikelihood -= surprises * Math.abs(height) + trials.weight(i) * StrictMath.log1p(small);
      probabilities[i] = height >= 0 ? likely : unlikely;
      residuals[i] = height >= 0 ? unlikely : likely;
      information.put(i, trials.weight(i) * likely * unlikely);
    }
    information.settle();
    value = logLikelihood + penalty.value(information.sum(), information.spread());
    lookAround();
    return value;
  }

  /** At a place, the penalty is like so many trials more, half of them made. */
  private void lookAround() {
    for (int i = 0; i < trials.size(); i++) {
      double chance = probabilities[i];
      double miss = residuals[i];
      double more = penalty.trials(information.leverage(i));
      bend.put(i, (trials.weight(i) + more) * chance * miss);
      residuals[i] = (trials.made(i) + more / 2) * miss - (trials.missed(i) + more / 2) * chance;
    }
    bend.settle();
    scoreOfHeight = 0;
    scoreOfSlope = 0;
    for (int i = 0; i < trials.size(); i++) {
      scoreOfHeight += residuals[i];
      scoreOfSlope += residuals[i] * bend.arm(i);
    }
  }

  /** The greatest height, up or down, that a curve has at any place. */
  double widest(double ofIntercept, double ofSlope) {
    return Math.max(
        Math.abs(ofIntercept + ofSlope * trials.place(0)),
        Math.abs(ofIntercept + ofSlope * trials.place(trials.size() - 1)));
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

  /** By how much it rises with the slope, the height at the centre of {@link #bend} held. */
  double scoreOfSlope() {
    return scoreOfSlope;
  }

  /** The expected information of the trials: of the height at its centre, and of the slope. */
  Moments information() {
    return information;
  }

  /** The same with the penalty's trials among them: how the surface bends, or nearly so. */
  Moments bend() {
    return bend;
  }
}
