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
  private final CleanForecast forecast;
  private final @Nullable Drill stands;

  SolidDrills(DogStanding dog, Ground ground, CleanForecast forecast) {
    this.drills =
        dog.pools().stream().filter(pool -> pool.isSolid()).flatMap(ground::drills).toList();
    this.forecast = forecast;
    this.stands = ground.available().stands();
  }

  boolean contains(DrillOfStage drill) {
    return drills.contains(drill);
  }

  /**
   * What differs least from a drill; of those what moves least of what stood when the session
   * began, and of those what goes best.
   */
  Optional<DrillOfStage> near(Drill drill) {
    return near(drill, _ -> true);
  }

  /** What is easier than a drill and differs least from it. */
  Optional<DrillOfStage> easierThan(Drill drill) {
    double share = forecast.share(drill);
    return near(
        drill,
        each ->
            forecast.share(each) > share
                && (each.rung().size() < drill.rung().size() || each.rung().size() == 0));
  }

  private Optional<DrillOfStage> near(Drill drill, Predicate<Drill> which) {
    return drills.stream()
        .filter(each -> which.test(each.drill()))
        .min(
            Comparator.comparingInt((DrillOfStage each) -> OneChange.between(each.drill(), drill))
                .thenComparingInt(each -> OneChange.onGround(each.drill(), stands))
                .thenComparingDouble(each -> -forecast.share(each.drill())));
  }
}
