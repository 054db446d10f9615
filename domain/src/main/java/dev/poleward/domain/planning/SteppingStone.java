package dev.poleward.domain.planning;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.programme.Stage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The way to a rung that is still too far: the same drill from a smaller angle. Trainers turn the
 * poles as far as the dog can follow, whatever the plan on paper says [C]. Nobody is crowded on the
 * way: of pressure there are no stones.
 *
 * <p>A stone that lies within the programme's tolerance of a rung counts for its test. That is
 * right for what was meant to lie there; what is laid out short on purpose has to lie within half
 * of it, or the rung would be passed by what it does not ask for.
 */
final class SteppingStone {

  /**
   * Degrees from stone to stone: five minutes on the clock, by which the last of four poles moves 8
   * cm [D]. Half of the customary turn: what a dog can do falls off within few degrees of what it
   * has practised.
   */
  static final double STEP_DEGREES = 2.5;

  /** Part of the tolerance by which a stone may fall short of a rung that it counts for [C]. */
  private static final double PART_OF_TOLERANCE = 0.5;

  /** What is nearer to straight on is laid out straight on: nobody could tell them apart [C]. */
  private static final double DEGREES_MIN = 7.5;

  private static final double SLIVER = 1e-6;

  private final Programme programme;
  private final CleanForecast forecast;

  /** The same places are looked at again and again. */
  private final Map<Place, Boolean> fallShort = new HashMap<>();

  SteppingStone(Programme programme, CleanForecast forecast) {
    this.programme = programme;
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

  /** The same drill, or the nearest on the way to it from no larger an angle than that. */
  Drill within(Drill drill, double sizeMax) {
    return drill.rung().size() <= sizeMax
        ? drill
        : from(drill, sizeFrom(List.of(drill), 0, sizeMax).orElse(0));
  }

  private OptionalDouble sizeFrom(List<Drill> drills, double share, double sizeMax) {
    double most = Math.min(sizeMax, forecast.reach(drills.getFirst())) + SLIVER;
    double rung = drills.getFirst().rung().size();
    for (double size = rung; size > DEGREES_MIN - SLIVER; size -= STEP_DEGREES) {
      if (size <= most) {
        List<Drill> stones = from(drills, size);
        if (forecast.share(stones) >= share && !fallsShort(stones.getFirst())) {
          return OptionalDouble.of(size);
        }
      }
    }
    return forecast.share(from(drills, 0)) >= share ? OptionalDouble.of(0) : OptionalDouble.empty();
  }

  /** Whether a stone would count for a rung that it does not show, of whatever stage. */
  private boolean fallsShort(Drill stone) {
    return fallShort.computeIfAbsent(Place.of(stone), _ -> isShortOfARung(stone));
  }

  private boolean isShortOfARung(Drill stone) {
    return programme.stages().stream()
        .filter(stage -> stage.ground().line().poles() == stone.poles())
        .filter(stage -> stage.runUps().stream().anyMatch(each -> isRunAs(each, stone.runUp())))
        .anyMatch(stage -> fallsShort(stage, stone.rung()));
  }

  private static boolean isRunAs(RunUp one, RunUp other) {
    return one.asRun().equals(other.asRun());
  }

  private static boolean fallsShort(Stage stage, Rung stone) {
    double most = stage.terms().toleranceDegrees() * PART_OF_TOLERANCE + SLIVER;
    return stage
        .rungOf(stone.angle())
        .filter(rung -> rung.size() - stone.size() > most)
        .isPresent();
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
