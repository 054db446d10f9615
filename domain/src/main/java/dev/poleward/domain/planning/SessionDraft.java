package dev.poleward.domain.planning;

import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Programme;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A session while it is being made. For one thread. */
final class SessionDraft {

  private final Programme programme;
  private final CleanForecast forecast;
  private final SolidDrills solid;
  private final Room room;
  private final List<PlanBlock> blocks = new ArrayList<>();

  /** What is run once the rest is; it has its room, and its part of the surplus. */
  private final List<PlanBlock> later = new ArrayList<>();

  /** An empty session, with one rep of its room kept for the end. */
  SessionDraft(Programme programme, CleanForecast forecast, SolidDrills solid, Limits limits) {
    this.programme = programme;
    this.forecast = forecast;
    this.solid = solid;
    this.room = new Room(limits);
    room.keepOne();
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
    if (reps > 0) {
      room.take(drill.drill(), reps);
      Optional<PlanBlock> before = to.isEmpty() ? Optional.empty() : Optional.of(to.getLast());
      before
          .filter(block -> block.drill().equals(drill) && block.purpose() == purpose)
          .ifPresentOrElse(
              block -> to.set(to.size() - 1, block.longerBy(reps)),
              () ->
                  to.add(
                      new PlanBlock(
                          drill,
                          reps,
                          purpose,
                          forecast.expected(drill.drill()),
                          solid.easierThan(drill.drill()).orElse(null))));
    }
    return reps;
  }

  /** How many reps are left, but for those that are kept. */
  int repsLeft() {
    return room.reps();
  }

  /** By how much it is above the programme's floor so far, its end included, in clean reps. */
  double surplus() {
    double floor = programme.cleanFloor();
    return programme.cleanTarget()
        - floor
        + Stream.of(blocks, later)
            .flatMap(List::stream)
            .mapToDouble(block -> block.reps() * (block.expected().value() - floor))
            .sum();
  }

  /** What it would be left with, if nothing else were added. */
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

  boolean isEmpty() {
    return blocks.isEmpty();
  }

  /** Puts what was kept for later behind the rest, and sets the last rep free. */
  void closeUp() {
    blocks.addAll(later);
    later.clear();
    room.useKept();
  }

  SessionPlan plan() {
    return new SessionPlan(blocks);
  }
}
