package dev.poleward.domain.mastery;

/**
 * Climbs a {@link LikelihoodSurface} by Fisher scoring, with the penalty's trials counted in: the
 * step that would lead to the top if the surface bent alike everywhere, halved for as long as it
 * leads down. Never goes down, and ends after a bounded number of steps. For one thread.
 *
 * <p>Either all curves are free, or those on a line: {@code from + t · along} for any t.
 */
final class Ascent {

  /** Steps to a summit; a fit takes 5 to 20. */
  static final int STEPS_MAX = 200;

  private static final int HALVINGS_MAX = 40;

  /** Where the surface is all but flat it bends so little that a whole step would lead nowhere. */
  private static final double LOGITS_MAX = 5;

  /** The gain still expected at which we have arrived, in log likelihood. */
  private static final double GAIN_LEFT = 1e-20;

  /** What rounding may take from a value of size 1. */
  private static final double ROUNDING = 1e-14;

  private final LikelihoodSurface surface;
  private final double start;

  private Ascent(LikelihoodSurface surface, double start) {
    this.surface = surface;
    this.start = start;
  }

  /** Ready to climb, from the level curve that fits best but for half a trial either way. */
  static Ascent of(Trials trials, Penalty penalty) {
    double made = 0.5;
    double missed = 0.5;
    for (int i = 0; i < trials.size(); i++) {
      made += trials.made(i);
      missed += trials.missed(i);
    }
    return new Ascent(new LikelihoodSurface(trials, penalty), StrictMath.log(made / missed));
  }

  /** Climbs to the summit. */
  LogisticFit toTheSummit() {
    surface.stand(start, 0);
    for (int step = 0; step < STEPS_MAX; step++) {
      Moments bend = surface.bend();
      double byHeight = surface.scoreOfHeight() / bend.sum();
      double bySlope = surface.scoreOfSlope() / bend.spread();
      double gain = surface.scoreOfHeight() * byHeight + surface.scoreOfSlope() * bySlope;
      if (!(gain > GAIN_LEFT) || partStepped(byHeight - bend.centre() * bySlope, bySlope) == 0) {
        break;
      }
    }
    Moments information = surface.information();
    double ofSlope = 1 / information.spread();
    return new LogisticFit(
        surface.intercept(),
        surface.slope(),
        1 / information.sum() + information.centre() * information.centre() * ofSlope,
        -information.centre() * ofSlope,
        ofSlope,
        surface.value());
  }

  /**
   * Climbs to the highest curve of a line, and stays there.
   *
   * @param from the t to begin with; where that is beyond all numbers, 0
   * @return its t
   */
  double toTheTopOf(Line line, double from) {
    double t = from;
    if (!Double.isFinite(surface.stand(line.intercept(t), line.slope(t)))) {
      t = 0;
      surface.stand(line.intercept(t), line.slope(t));
    }
    for (int step = 0; step < STEPS_MAX; step++) {
      Moments bend = surface.bend();
      double lift = line.alongIntercept() + line.alongSlope() * bend.centre();
      double turn = line.alongSlope();
      double score = surface.scoreOfHeight() * lift + surface.scoreOfSlope() * turn;
      double by = score / (bend.sum() * lift * lift + bend.spread() * turn * turn);
      double part =
          score * by > GAIN_LEFT
              ? partStepped(by * line.alongIntercept(), by * line.alongSlope())
              : 0;
      if (part == 0) {
        break;
      }
      t += part * by;
    }
    return t;
  }

  /** What it climbs, at the place that was reached last. */
  LikelihoodSurface surface() {
    return surface;
  }

  /**
   * Takes a step, or the part of it that moves the curve by no more than {@link #LOGITS_MAX}, or
   * the first half of a half of that which does not lead down; 0 if none.
   */
  private double partStepped(double byIntercept, double bySlope) {
    double intercept = surface.intercept();
    double slope = surface.slope();
    double least = surface.value() - ROUNDING * (1 + Math.abs(surface.value()));
    double part = Math.min(1, LOGITS_MAX / surface.widest(byIntercept, bySlope));
    for (int halving = 0; halving < HALVINGS_MAX; halving++) {
      if (surface.stand(intercept + part * byIntercept, slope + part * bySlope) >= least) {
        return part;
      }
      part /= 2;
    }
    surface.stand(intercept, slope);
    return 0;
  }
}
