package dev.poleward.domain.planning;

import dev.poleward.domain.programme.Drill;

/** How much is changed at a time between two drills. */
final class OneChange {

  private OneChange() {}

  /** How many of poles, run-up, angle with its side, and handling differ. */
  static int between(Drill one, Drill other) {
    int changes = 0;
    changes += one.poles() == other.poles() ? 0 : 1;
    changes += one.runUp().equals(other.runUp()) ? 0 : 1;
    changes += one.rung().equals(other.rung()) ? 0 : 1;
    changes += alike(one, other) ? 0 : 1;
    return changes;
  }

  private static boolean alike(Drill one, Drill other) {
    return one.handling().manoeuvre() == other.handling().manoeuvre()
        && one.handling().dogSide() == other.handling().dogSide();
  }
}
