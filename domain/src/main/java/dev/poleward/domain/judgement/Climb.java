package dev.poleward.domain.judgement;

import org.jspecify.annotations.Nullable;

/**
 * Climbs a hill by Newton's method, damped where the hill does not bend down: never goes down, and
 * ends after a bounded number of steps.
 */
final class Climb {

  private static final int STEPS_MAX = 200;
  private static final int DAMPINGS_MAX = 60;

  /** The gain still expected at which we have arrived. */
  private static final double GAIN_LEFT = 1e-18;

  /** Of either coordinate at once. */
  private static final double STEP_MAX = 3;

  private Climb() {}

  /**
   * From a place to the top.
   *
   * @param farthest neither coordinate is let beyond it: some hills have their top at infinity
   */
  static Hill.Place from(Hill hill, double x, double y, double farthest) {
    Hill.Place here = hill.at(x, y);
    for (int step = 0; step < STEPS_MAX; step++) {
      Hill.Place next = step(hill, here, farthest);
      if (next == null) {
        break;
      }
      here = next;
    }
    return here;
  }

  private static Hill.@Nullable Place step(Hill hill, Hill.Place here, double farthest) {
    double damping = 0;
    double least = 1e-6 * (1 + Math.abs(here.byXX()) + Math.abs(here.byYY()));
    for (int i = 0; i < DAMPINGS_MAX; i++) {
      double xx = damping - here.byXX();
      double yy = damping - here.byYY();
      double det = xx * yy - here.byXY() * here.byXY();
      if (xx > 0 && det > 0) {
        double byX = (yy * here.byX() + here.byXY() * here.byY()) / det;
        double byY = (xx * here.byY() + here.byXY() * here.byX()) / det;
        if (byX * here.byX() + byY * here.byY() <= GAIN_LEFT) {
          return null;
        }
        double part = Math.min(1, STEP_MAX / Math.max(Math.abs(byX), Math.abs(byY)));
        Hill.Place next =
            hill.at(
                within(here.x() + part * byX, farthest), within(here.y() + part * byY, farthest));
        if (next.height() > here.height()) {
          return next;
        }
      }
      damping = Math.max(least, 4 * damping);
    }
    return null;
  }

  private static double within(double coordinate, double farthest) {
    return Math.max(-farthest, Math.min(farthest, coordinate));
  }
}
