package dev.poleward.domain.planning;

import dev.poleward.domain.programme.Drill;
import org.jspecify.annotations.Nullable;

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

  /** How much is to be moved on the ground: poles, lead-in and angle; 0 where nothing stands. */
  static int onGround(Drill drill, @Nullable Drill stands) {
    if (stands == null) {
      return 0;
    }
    int changes = 0;
    changes += drill.poles() == stands.poles() ? 0 : 1;
    changes += drill.runUp().leadIn() == stands.runUp().leadIn() ? 0 : 1;
    changes += drill.rung().equals(stands.rung()) ? 0 : 1;
    return changes;
  }

  private static boolean alike(Drill one, Drill other) {
    return one.handling().manoeuvre() == other.handling().manoeuvre()
        && one.handling().dogSide() == other.handling().dogSide();
  }
}
