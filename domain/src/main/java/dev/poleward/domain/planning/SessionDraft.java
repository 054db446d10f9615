package dev.poleward.domain.planning;

import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A session while it is being made. For one thread. */
final class SessionDraft {

  private final Outset outset;
  private final Room room;

  /** What it is to end with, if nothing nearer is found; null when it may end as it comes. */
  private final @Nullable DrillOfStage end;

  private final List<PlanBlock> blocks = new ArrayList<>();

  /** What is run once the rest is; it has its room, and its part of the surplus. */
  private final List<PlanBlock> later = new ArrayList<>();

  /** An empty session, with room for one rep of its end. */
  SessionDraft(Outset outset, @Nullable DrillOfStage end) {
    this.outset = outset;
    this.room = new Room(outset.ground().limits());
    this.end = end;
    if (end != null) {
      room.take(end.drill(), 1);
    }
  }

  /** Adds as many reps as still fit, and tells how many. */
  int add(DrillOfStage drill, int wanted, PlanBlock.Purpose purpose) {
    return addTo(blocks, drill, wanted, purpose);
  }

  /** Adds as many reps as still fit, to be run after whatever else is added. */
  int addLater(DrillOfStage drill, int wanted, PlanBlock.Purpose purpose) {
    return addTo(later, drill, wanted, purpose);
  }

  private int addTo(List<PlanBlock> to, DrillOfStage drill, int wanted, PlanBlock.Purpose purpose) {
    int reps = room.of(drill.drill(), wanted);
    if (reps <= 0) {
      return 0;
    }
    room.take(drill.drill(), reps);
    if (!to.isEmpty() && to.getLast().isOf(drill, purpose)) {
      to.set(to.size() - 1, to.getLast().longerBy(reps));
    } else {
      to.add(
          new PlanBlock(
              drill,
              reps,
              purpose,
              outset.forecast().expected(drill.drill()),
              outset.solid().easierThan(drill.drill()).orElse(null)));
    }
    return reps;
  }

  /** What is still to be used, the end left aside. */
  Room room() {
    return room;
  }

  /** By how much it is above the programme's floor so far, its end included, in clean reps. */
  double surplus() {
    double floor = outset.floor();
    double ofEnd =
        end == null ? 0 : Math.min(outset.target(), outset.forecast().share(end.drill())) - floor;
    return ofEnd
        + Stream.of(blocks, later)
            .flatMap(List::stream)
            .mapToDouble(block -> block.reps() * (block.expected().value() - floor))
            .sum();
  }

  List<PlanBlock> blocks() {
    return List.copyOf(blocks);
  }

  /** What was added last, of what is not for later. */
  Optional<PlanBlock> last() {
    return blocks.isEmpty() ? Optional.empty() : Optional.of(blocks.getLast());
  }

  /** What changes least from the last drill; of those the first. */
  Drill nearest(List<Drill> drills) {
    return last()
        .map(block -> block.drill().drill())
        .flatMap(
            before ->
                drills.stream()
                    .min(Comparator.comparingInt(drill -> OneChange.between(drill, before))))
        .orElseGet(drills::getFirst);
  }

  /** Puts what was kept for later behind the rest. */
  void closeUp() {
    blocks.addAll(later);
    later.clear();
  }

  /** Ends it, where an end was asked for, with what is nearest to the last drill and fits. */
  void end() {
    if (end != null) {
      room.giveBack(end.drill(), 1);
      DrillOfStage nearest =
          last()
              .flatMap(block -> outset.end(block.drill()))
              .filter(each -> room.of(each.drill(), 1) == 1)
              .orElse(end);
      add(nearest, 1, PlanBlock.Purpose.FINISH);
    }
  }
}
