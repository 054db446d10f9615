package dev.poleward.domain.planning;

import dev.poleward.domain.care.Load;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageState;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** What the dog can be relied on to do, to begin with, to end with, and to come back to. */
final class SolidDrills {

  static final double ANY_ANGLE = 180;

  /** All that was solid when it was last run, however long ago. */
  private final List<DrillOfStage> learned;

  /** What of it goes well today. */
  private final List<DrillOfStage> reliable;

  /** What was clean before, can be expected to go as well, and counts for a test besides. */
  private final List<DrillOfStage> open;

  private final CleanForecast forecast;
  private final SteppingStone stones;
  private final double target;

  /** Degrees beyond which the day allows nothing. */
  private final double sizeAllowed;

  private final @Nullable Drill stands;

  SolidDrills(
      DogStanding dog,
      Ground ground,
      CleanForecast forecast,
      SteppingStone stones,
      List<Work> work) {
    this.forecast = forecast;
    this.stones = stones;
    this.target = dog.programme().cleanTarget();
    this.sizeAllowed = ground.limits().sharpBends() > 0 ? ANY_ANGLE : Load.SHARP_BEND_DEGREES;
    this.learned =
        dog.stages().stream()
            .filter(stage -> stage.state() != StageState.LOCKED)
            .flatMap(stage -> stage.pools().stream())
            .filter(SolidDrills::wasLearned)
            .flatMap(ground::drills)
            .filter(each -> !Ground.isPressure(each.drill()))
            .toList();
    this.reliable =
        learned.stream().filter(each -> forecast.share(each.drill()) >= target).toList();
    this.open =
        work.stream()
            .filter(Work::withinReach)
            .flatMap(each -> each.drillsOnceClean().map(each::of))
            .filter(each -> !Ground.isPressure(each.drill()))
            .filter(each -> forecast.share(each.drill()) >= target)
            .toList();
    this.stands = ground.available().stands();
  }

  private static boolean wasLearned(PoolStanding pool) {
    return switch (pool.state()) {
      case SOLID, DUE -> true;
      case UNTOUCHED, LEARNING, SLIPPING -> false;
    };
  }

  /**
   * What to begin or to end with, beside a drill: best what counts for a test besides; else the
   * hardest on the way to it that can be expected to go as well as what is solid, for that keeps
   * more fresh and moves less; else what is solid and goes well; else, as after long without
   * practice, what is likeliest to. Nothing for a dog that nothing of the kind can be expected of.
   *
   * @param sizeMax degrees; what lies beyond is taken only where there is nothing else
   */
  Optional<DrillOfStage> reliableNear(DrillOfStage drill, double sizeMax) {
    Predicate<Drill> within = each -> each.rung().size() <= sizeMax;
    Optional<DrillOfStage> known =
        near(reliable, drill.drill(), within).or(() -> near(reliable, drill.drill(), _ -> true));
    double knownSize = known.map(each -> each.drill().rung().size()).orElse(-1.0);
    return near(open, drill.drill(), within)
        .or(
            () ->
                stones
                    .hardest(drill.drill(), target, Math.min(sizeMax, sizeAllowed))
                    .filter(stone -> stone.rung().size() > knownSize)
                    .map(stone -> new DrillOfStage(drill.stage(), stone)))
        .or(() -> known)
        .or(this::likeliest);
  }

  private Optional<DrillOfStage> likeliest() {
    return learned.stream().max(Comparator.comparingDouble(each -> forecast.share(each.drill())));
  }

  /** What goes well from one entry side, and differs least from a drill. */
  Optional<DrillOfStage> reliableFrom(EntrySide side, Drill drill, double sizeMax) {
    return near(
        reliable, drill, each -> each.rung().side() == side && each.rung().size() <= sizeMax);
  }

  /** What is easier than a drill and differs least from it. */
  Optional<DrillOfStage> easierThan(Drill drill) {
    double share = forecast.share(drill);
    return near(
        learned,
        drill,
        each ->
            asksForLess(each, drill)
                || (forecast.share(each) > share
                    && each.poles() <= drill.poles()
                    && (each.rung().size() < drill.rung().size() || each.rung().size() == 0)));
  }

  /** Fewer poles or a smaller angle, and else the same: easier, however sure the dog is of both. */
  private static boolean asksForLess(Drill one, Drill other) {
    return one.runUp().asRun().equals(other.runUp().asRun())
        && one.poles() <= other.poles()
        && one.rung().size() <= other.rung().size()
        && (one.rung().side() == other.rung().side() || one.rung().size() == 0)
        && !Place.of(one).equals(Place.of(other));
  }

  /**
   * What differs least from a drill; of those what moves least of what stood when the session
   * began, and of those what goes best.
   */
  private Optional<DrillOfStage> near(
      List<DrillOfStage> among, Drill drill, Predicate<Drill> which) {
    return among.stream()
        .filter(each -> which.test(each.drill()))
        .min(
            Comparator.comparingInt((DrillOfStage each) -> OneChange.between(each.drill(), drill))
                .thenComparingInt(each -> OneChange.onGround(each.drill(), stands))
                .thenComparingDouble(each -> -forecast.share(each.drill())));
  }
}
