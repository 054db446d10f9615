package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** What the dog can be relied on to do, to begin with, to end with, and to come back to. */
final class SolidDrills {

  private final List<DrillOfStage> drills;

  /** What can be expected to go as well, and counts for a test besides. */
  private final List<DrillOfStage> open;

  private final CleanForecast forecast;
  private final SteppingStone stones;
  private final double target;
  private final @Nullable Drill stands;

  SolidDrills(DogStanding dog, Ground ground, CleanForecast forecast) {
    this.drills =
        dog.pools().stream().filter(pool -> pool.isSolid()).flatMap(ground::drills).toList();
    this.forecast = forecast;
    this.stones = new SteppingStone(dog, forecast);
    this.target = dog.programme().cleanTarget();
    this.open =
        Work.of(dog, ground, forecast).stream()
            .flatMap(work -> work.drills().stream().map(work::of))
            .filter(each -> forecast.share(each.drill()) >= target)
            .toList();
    this.stands = ground.available().stands();
  }

  boolean contains(DrillOfStage drill) {
    return drills.contains(drill);
  }

  /**
   * What to begin or to end with, beside a drill: best what counts for a test besides; else the
   * hardest on the way to it that can be expected to go as well as what is solid, for that keeps
   * more fresh and moves less; else what is solid. Nothing for a dog with nothing solid.
   */
  Optional<DrillOfStage> reliableNear(Drill drill) {
    return near(drill)
        .map(known -> near(open, drill, _ -> true).or(() -> onTheWay(known, drill)).orElse(known));
  }

  private Optional<DrillOfStage> onTheWay(DrillOfStage known, Drill to) {
    return stones
        .hardest(to, target)
        .filter(stone -> stone.rung().size() > known.drill().rung().size())
        .map(stone -> new DrillOfStage(known.stage(), stone));
  }

  /**
   * What differs least from a drill; of those what moves least of what stood when the session
   * began, and of those what goes best.
   */
  Optional<DrillOfStage> near(Drill drill) {
    return near(drills, drill, _ -> true);
  }

  /** What is easier than a drill and differs least from it. */
  Optional<DrillOfStage> easierThan(Drill drill) {
    double share = forecast.share(drill);
    return near(
        drills,
        drill,
        each ->
            asksForLess(each, drill)
                || (forecast.share(each) > share
                    && (each.rung().size() < drill.rung().size() || each.rung().size() == 0)));
  }

  /** Fewer poles, and else the same: easier, however sure the dog is of both. */
  private static boolean asksForLess(Drill one, Drill other) {
    return one.poles() < other.poles()
        && one.runUp().equals(other.runUp())
        && one.rung().equals(other.rung());
  }

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
