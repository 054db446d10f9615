package dev.poleward.domain.planning;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;

/**
 * How much a dog has practised so far, counted in clean reps: at each angle, with each manoeuvre
 * and lead-in, and in all. Practice at one angle counts at its neighbours in part, farther towards
 * straight on than away from it: whoever runs the harder entry also practises the easier one [C].
 * (Counts of what went well and what did not, as in performance factors analysis: Pavlik, Cen,
 * Koedinger 2009 [M].) For one thread.
 */
final class Practice {

  private static final double STEP_DEGREES = 7.5;
  private static final int KNOTS = (int) (180 / STEP_DEGREES) + 1;

  /** Degrees over which practice reaches larger angles, and smaller ones [C]. */
  private static final double REACHES_OUT = 16;

  private static final double REACHES_IN = 30;

  /** A miss counts for so much of a clean rep [C]. */
  private static final double MISS = 0.7;

  private static final double[] OUT = bell(REACHES_OUT);
  private static final double[] IN = bell(REACHES_IN);

  private final double[] onPoleSide = new double[KNOTS];
  private final double[] onGapSide = new double[KNOTS];
  private final double[] manoeuvres = new double[Manoeuvre.values().length];
  private final double[] leadIns = new double[LeadIn.values().length];
  private double all;

  private static double[] bell(double width) {
    double[] bell = new double[KNOTS];
    for (int knot = 0; knot < KNOTS; knot++) {
      double widths = knot * STEP_DEGREES / width;
      bell[knot] = StrictMath.exp(-widths * widths / 2);
    }
    return bell;
  }

  void ran(EntryAngle angle, Manoeuvre manoeuvre, LeadIn leadIn, boolean clean) {
    double counts = clean ? 1 : MISS;
    int at = (int) Math.round(angle.size() / STEP_DEGREES);
    switch (angle.side()) {
      case POLE -> {
        add(onPoleSide, at, counts);
        onGapSide[0] += counts * IN[at];
      }
      case GAP -> {
        add(onGapSide, at, counts);
        onPoleSide[0] += counts * IN[at];
      }
      case BOTH -> {
        add(onPoleSide, at, counts);
        add(onGapSide, at, counts);
      }
    }
    manoeuvres[manoeuvre.ordinal()] += counts;
    leadIns[leadIn.ordinal()] += counts;
    all += counts;
  }

  private static void add(double[] side, int at, double counts) {
    for (int knot = 0; knot < KNOTS; knot++) {
      side[knot] += counts * (knot > at ? OUT[knot - at] : IN[at - knot]);
    }
  }

  double at(EntryAngle angle) {
    return switch (angle.side()) {
      case POLE -> at(onPoleSide, angle.size());
      case GAP -> at(onGapSide, angle.size());
      case BOTH -> (onPoleSide[0] + onGapSide[0]) / 2;
    };
  }

  private static double at(double[] side, double size) {
    double place = size / STEP_DEGREES;
    int below = Math.min((int) place, KNOTS - 2);
    double part = place - below;
    return side[below] * (1 - part) + side[below + 1] * part;
  }

  double with(Manoeuvre manoeuvre) {
    return manoeuvres[manoeuvre.ordinal()];
  }

  double from(LeadIn leadIn) {
    return leadIns[leadIn.ordinal()];
  }

  double inAll() {
    return all;
  }
}
