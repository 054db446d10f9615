package dev.poleward.domain.planning;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.record.PlacedRep;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How far from straight on a dog was clean, over so many poles, from what stood before them, on
 * either entry side; whatever the handler did. Reps with help do not show what it can.
 */
final class CleanReach {

  private final Map<Approached, Double> degrees = new HashMap<>();

  /** A side of a line of poles, as it was come to. */
  private record Approached(int poles, RunUp runUp, EntrySide side) {}

  static CleanReach of(List<PlacedRep> reps) {
    CleanReach reach = new CleanReach();
    reps.stream()
        .filter(rep -> rep.outcome() == Outcome.CLEAN && !rep.isHelped())
        .forEach(rep -> reach.ran(rep.setup(), rep.angle(), rep));
    return reach;
  }

  private void ran(@Nullable Setup setup, @Nullable EntryAngle angle, PlacedRep rep) {
    if (setup != null && angle != null) {
      RunUp runUp = RunUp.asRun(setup.leadIn(), rep.details());
      if (runUp != null) {
        ran(setup.poles(), runUp, angle);
      }
    }
  }

  /** Straight on belongs to both sides, and who runs from aside has nothing new straight on. */
  private void ran(int poles, RunUp runUp, EntryAngle angle) {
    switch (angle.side()) {
      case BOTH -> {
        farther(poles, runUp, EntrySide.POLE, 0);
        farther(poles, runUp, EntrySide.GAP, 0);
      }
      case POLE, GAP -> farther(poles, runUp, angle.side(), angle.size());
    }
    farther(poles, runUp, EntrySide.BOTH, 0);
  }

  private void farther(int poles, RunUp runUp, EntrySide side, double size) {
    degrees.merge(new Approached(poles, runUp, side), size, Math::max);
  }

  /**
   * Whether a drill lies no more than so many degrees farther out than the dog was clean there.
   *
   * @param tolerance degrees
   */
  boolean holds(Drill drill, double tolerance) {
    Double reached =
        degrees.get(new Approached(drill.poles(), drill.runUp().asRun(), drill.rung().side()));
    return reached != null && drill.rung().size() <= reached + tolerance;
  }
}
