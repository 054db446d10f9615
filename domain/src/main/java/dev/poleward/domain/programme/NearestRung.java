package dev.poleward.domain.programme;

import dev.poleward.domain.layout.EntryAngle;
import java.util.List;
import java.util.Optional;

/**
 * The one rule by which an approach belongs to a rung of a stage: of those on its entry side the
 * nearest within the tolerance, and of two as near the smaller angle.
 *
 * @param rungs ascending
 * @param toleranceDegrees how far off an approach may be, the border included
 */
record NearestRung(List<Rung> rungs, double toleranceDegrees) {

  /** Keeps the rungs from changing. */
  NearestRung {
    rungs = List.copyOf(rungs);
  }

  /** Of a stage; a hair wider than it says, so that sums of steps do not decide at the border. */
  static NearestRung of(Stage stage) {
    return new NearestRung(
        stage.rungs(), stage.terms().toleranceDegrees() + Entries.SLIVER_DEGREES);
  }

  /** The rung that an approach belongs to; empty where none is near enough. */
  Optional<Rung> to(EntryAngle angle) {
    Rung nearest = null;
    double least = toleranceDegrees;
    for (Rung each : rungs) {
      double distance = each.distanceTo(angle);
      boolean nearer = nearest == null ? distance <= least : distance < least;
      if (nearer && each.isOnSideOf(angle)) {
        nearest = each;
        least = distance;
      }
    }
    return Optional.ofNullable(nearest);
  }
}
