package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Rung;
import java.util.Optional;

/**
 * The way to a rung that is still too far: the same drill from a smaller angle, between what the
 * dog has behind it and the rung. Trainers turn the poles as far as the dog can follow, whatever
 * the plan on paper says [C].
 */
final class SteppingStone {

  /** Degrees from stone to stone: half a quarter of an hour on the clock [C]. */
  static final double STEP_DEGREES = 3.75;

  private static final double SLIVER = 1e-6;

  private final DogStanding dog;
  private final CleanForecast forecast;

  SteppingStone(DogStanding dog, CleanForecast forecast) {
    this.dog = dog;
    this.forecast = forecast;
  }

  /** The largest angle from which that share can be expected, or else the smallest there is. */
  Drill towards(Drill drill, double share) {
    double behind = behind(drill);
    Drill stone = drill;
    for (double angle = drill.rung().size() - STEP_DEGREES;
        angle > behind + SLIVER && forecast.share(stone) < share;
        angle -= STEP_DEGREES) {
      stone = from(drill, angle);
    }
    return stone;
  }

  /** The hardest on the way from which at least that share can be expected. */
  Optional<Drill> hardest(Drill drill, double share) {
    for (double angle = drill.rung().size(); angle > SLIVER; angle -= STEP_DEGREES) {
      Drill stone = from(drill, angle);
      if (forecast.share(stone) >= share) {
        return Optional.of(stone);
      }
    }
    return Optional.empty();
  }

  private static Drill from(Drill drill, double size) {
    double degrees = drill.rung().side() == EntrySide.GAP ? -size : size;
    return new Drill(
        drill.poles(), drill.runUp(), new Rung(new EntryAngle(degrees)), drill.handling());
  }

  /** The largest smaller angle on that side, over as many poles, that is behind the dog. */
  private double behind(Drill drill) {
    double largest = 0;
    for (PoolStanding pool : dog.pools()) {
      Rung rung = pool.pool().rung();
      if (pool.isBehind()
          && pool.stage().ground().line().poles() == drill.poles()
          && rung.side() == drill.rung().side()
          && rung.size() < drill.rung().size()) {
        largest = Math.max(largest, rung.size());
      }
    }
    return largest;
  }
}
