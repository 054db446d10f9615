package dev.poleward.domain.planning;

import dev.poleward.domain.programme.Drill;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/** What a dog is given to come nearer to a rung that it cannot be expected to pass yet. */
final class Lessons {

  /** A drill of the rung itself does, where it is easier by no more than that [C]. */
  private static final double EASIER = 0.08;

  private final CleanForecast forecast;
  private final SteppingStone stones;

  Lessons(CleanForecast forecast, SteppingStone stones) {
    this.forecast = forecast;
    this.stones = stones;
  }

  /**
   * Best a drill of the rung itself, for it counts for the test; else a stepping stone. What
   * changes least from the drill before goes first; of those what goes best, so that the stone lies
   * as near to the rung as can be.
   *
   * @param share that is to be expected clean at least
   * @param before null at the beginning of a session
   */
  Drill towards(Work work, double share, @Nullable Drill before) {
    Comparator<Drill> nearest = Comparator.comparingInt(drill -> changes(drill, before));
    return work.drills().stream()
        .filter(drill -> forecast.share(drill) >= share)
        .filter(drill -> forecast.share(drill) <= share + EASIER)
        .min(nearest)
        .orElseGet(
            () ->
                stones.towards(
                    work.drills().stream()
                        .min(nearest.thenComparingDouble(drill -> -forecast.share(drill)))
                        .orElseThrow(),
                    share));
  }

  private static int changes(Drill drill, @Nullable Drill before) {
    return before == null ? 0 : OneChange.between(drill, before);
  }
}
