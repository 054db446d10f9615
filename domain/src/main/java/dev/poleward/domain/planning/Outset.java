package dev.poleward.domain.planning;

import dev.poleward.domain.care.Load;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.NextRungs;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All that a session can be made of today.
 *
 * @param refreshers what slips, then what is due, the smallest angle first; each place once
 * @param work what has its turn: what is decided soonest first
 * @param look what is tried before its turn
 * @param upkeep what is kept solid, where there is nothing else to run
 * @param otherSide where the session begins and ends
 */
record Outset(
    DogStanding dog,
    CleanForecast forecast,
    Ground ground,
    SteppingStone stones,
    SolidDrills solid,
    List<NextRung> refreshers,
    List<Work> work,
    Optional<Part> look,
    List<Part> upkeep,
    OtherSide otherSide) {

  /** Nothing sharper is a beginning, where there is anything else [C]. */
  private static final double BEGINNING_DEGREES = Load.SHARP_BEND_DEGREES;

  static Outset of(DogStanding dog, CleanForecast forecast, Available available, Limits limits) {
    Ground ground = Ground.of(available, limits, dog);
    List<Work> work = Work.of(dog, ground, forecast);
    SteppingStone stones = new SteppingStone(dog.programme(), forecast);
    SolidDrills solid = new SolidDrills(dog, ground, forecast, stones, work);
    List<NextRung> refreshers = refreshers(dog, ground, forecast);
    Optional<Part> look = new LookAhead(dog, ground, forecast).today();
    boolean hasNothingElse = refreshers.isEmpty() && work.isEmpty() && look.isEmpty();
    return new Outset(
        dog,
        forecast,
        ground,
        stones,
        solid,
        refreshers,
        work,
        look,
        hasNothingElse ? Upkeep.of(dog, ground, forecast) : List.of(),
        OtherSide.of(work, limits, solid));
  }

  /** What two stages ask for alike is run once: its reps count for both. */
  private static List<NextRung> refreshers(DogStanding dog, Ground ground, CleanForecast forecast) {
    Set<Place> places = new HashSet<>();
    return NextRungs.refreshers(dog, forecast, pool -> !ground.allowed(pool).isEmpty()).stream()
        .sorted(
            Comparator.comparing((NextRung next) -> next.why() != NextRung.Reason.SLIPPING)
                .thenComparingDouble(next -> next.standing().pool().rung().size()))
        .filter(next -> places.add(Place.of(ground.allowed(next.standing()).getFirst())))
        .toList();
  }

  /** Whether a session can begin with it. */
  boolean isBeginning(Drill drill) {
    return drill.rung().size() <= BEGINNING_DEGREES && forecast.share(drill) >= target();
  }

  /** What goes well, to begin with before a drill. */
  Optional<DrillOfStage> beginning(DrillOfStage before) {
    return otherSide
        .reliableNear(before, BEGINNING_DEGREES)
        .or(() -> solid.reliableNear(before, BEGINNING_DEGREES));
  }

  /** What goes well, to end with after a drill. */
  Optional<DrillOfStage> end(DrillOfStage after) {
    return otherSide
        .reliableNear(after, SolidDrills.ANY_ANGLE)
        .or(() -> solid.reliableNear(after, SolidDrills.ANY_ANGLE));
  }

  double floor() {
    return dog.programme().cleanFloor();
  }

  double target() {
    return dog.programme().cleanTarget();
  }
}
