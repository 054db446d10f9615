package dev.poleward.domain.planning;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Rung;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The way to a rung that is still too far: the same drill from a smaller angle. Trainers turn the
 * poles as far as the dog can follow, whatever the plan on paper says [C]. Nobody is crowded on the
 * way: of pressure there are no stones.
 */
final class SteppingStone {

  /** Degrees from stone to stone: half a quarter of an hour on the clock [C]. */
  static final double STEP_DEGREES = 3.75;

  /** What is nearer to straight on is laid out straight on: nobody could tell them apart [C]. */
  private static final double DEGREES_MIN = 7.5;

  private static final double SLIVER = 1e-6;

  private final CleanForecast forecast;

  SteppingStone(CleanForecast forecast) {
    this.forecast = forecast;
  }

  /** The drills from the largest angle from which that share can be expected, or else straight. */
  List<Drill> towards(List<Drill> drills, double share) {
    return from(drills, sizeFrom(drills, share, SolidDrills.ANY_ANGLE).orElse(0));
  }

  /** The hardest on the way, from no larger an angle, from which that share can be expected. */
  Optional<Drill> hardest(Drill drill, double share, double sizeMax) {
    return Ground.isPressure(drill)
        ? Optional.empty()
        : sizeFrom(List.of(drill), share, sizeMax).stream()
            .mapToObj(size -> from(drill, size))
            .findFirst();
  }

  private OptionalDouble sizeFrom(List<Drill> drills, double share, double sizeMax) {
    double largest = Math.min(sizeMax, drills.getFirst().rung().size());
    for (double size = largest; size > DEGREES_MIN - SLIVER; size -= STEP_DEGREES) {
      if (forecast.share(from(drills, size)) >= share) {
        return OptionalDouble.of(size);
      }
    }
    return forecast.share(from(drills, 0)) >= share ? OptionalDouble.of(0) : OptionalDouble.empty();
  }

  /** The same drill from no larger an angle than that. */
  static Drill within(Drill drill, double sizeMax) {
    return drill.rung().size() <= sizeMax ? drill : from(drill, sizeMax);
  }

  private static List<Drill> from(List<Drill> drills, double size) {
    return drills.stream().map(drill -> from(drill, size)).toList();
  }

  private static Drill from(Drill drill, double size) {
    double degrees = drill.rung().side() == EntrySide.GAP && size > 0 ? -size : size;
    return new Drill(
        drill.poles(), drill.runUp(), new Rung(new EntryAngle(degrees)), drill.handling());
  }
}
