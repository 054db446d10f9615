package dev.poleward.domain.planning;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.List;
import java.util.Optional;

/**
 * Where all that has its turn lies on one entry side, the session begins and ends on the other, so
 * that none bends the dog one way only [C].
 *
 * @param side the other one; empty where both have their share, or the day allows but one
 */
record OtherSide(Optional<EntrySide> side, SolidDrills solid) {

  /** In smaller sessions there is no room for it [C]. */
  private static final int REPS_OF_SESSION_MIN = 4;

  static OtherSide of(List<Work> work, Limits limits, SolidDrills solid) {
    List<EntrySide> sides =
        work.stream().map(Work::side).filter(side -> side != EntrySide.BOTH).distinct().toList();
    return new OtherSide(
        Optional.of(sides)
            .filter(all -> all.size() == 1 && limits.reps() >= REPS_OF_SESSION_MIN)
            .map(all -> opposite(all.getFirst()))
            .filter(limits.sides()::contains),
        solid);
  }

  private static EntrySide opposite(EntrySide side) {
    return switch (side) {
      case POLE -> EntrySide.GAP;
      case GAP -> EntrySide.POLE;
      case BOTH -> EntrySide.BOTH;
    };
  }

  /** Whether something was run there, or nothing has to be. */
  boolean isServedBy(List<PlanBlock> blocks) {
    return side.isEmpty()
        || blocks.stream().anyMatch(block -> block.drill().drill().rung().side() == side.get());
  }

  /** What goes well there, from no larger an angle than that. */
  Optional<DrillOfStage> reliableNear(DrillOfStage drill, double sizeMax) {
    return side.flatMap(other -> solid.reliableFrom(other, drill.drill(), sizeMax));
  }
}
