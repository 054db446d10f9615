package dev.poleward.domain.planning;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.programme.Drill;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a dog is given to come nearer to a rung that it cannot be expected to pass yet. */
final class Lessons {

  /** Drills of the rung itself do, where they are easier by no more than that [C]. */
  private static final double EASIER = 0.08;

  private final CleanForecast forecast;
  private final SteppingStone stones;

  Lessons(CleanForecast forecast, SteppingStone stones) {
    this.forecast = forecast;
    this.stones = stones;
  }

  /**
   * Best drills of the rung itself, for they count for the test; else stepping stones. What changes
   * least from the drill before goes first; of those what goes best, so that the stone lies as near
   * to the rung as can be.
   *
   * @param share that is to be expected clean at least, all reps taken together
   * @param before null at the beginning of a session
   * @return a drill for each rep, all from one angle: the dog on one side of the handler, then on
   *     the other
   */
  List<Drill> towards(Work work, int reps, double share, @Nullable Drill before) {
    List<List<Drill>> ways =
        work.drills().stream()
            .filter(drill -> !Ground.isPressure(drill))
            .map(drill -> onBothSides(drill, work.drills(), reps))
            .toList();
    Comparator<List<Drill>> nearest =
        Comparator.comparing(this::isNew).thenComparing(way -> changes(way.getFirst(), before));
    return ways.stream()
        .filter(way -> forecast.isWithinReach(way.getFirst()))
        .filter(way -> forecast.share(way) >= share)
        .filter(way -> forecast.share(way) <= share + EASIER)
        .min(nearest)
        .orElseGet(
            () ->
                stones.towards(
                    ways.stream()
                        .min(nearest.thenComparingDouble(way -> -forecast.share(way)))
                        .orElseThrow(),
                    share));
  }

  /** One thing at a time: from a new angle by what the dog has met. */
  private boolean isNew(List<Drill> way) {
    return !forecast.hasMet(way.getFirst().handling().manoeuvre());
  }

  private static List<Drill> onBothSides(Drill drill, List<Drill> among, int reps) {
    Drill mirrored =
        among.stream()
            .filter(other -> isOnOtherSide(other, drill))
            .min(Comparator.comparingInt(other -> unlike(other, drill)))
            .orElse(drill);
    List<Drill> way = new ArrayList<>(Collections.nCopies(Math.ceilDiv(reps, 2), drill));
    way.addAll(Collections.nCopies(reps / 2, mirrored));
    return way;
  }

  private static boolean isOnOtherSide(Drill one, Drill other) {
    DogSide side = one.handling().dogSide();
    return side != null
        && other.handling().dogSide() != null
        && side != other.handling().dogSide()
        && !Ground.isPressure(one)
        && Objects.equals(one.runUp(), other.runUp());
  }

  private static int unlike(Drill one, Drill other) {
    return one.handling().manoeuvre() == other.handling().manoeuvre() ? 0 : 1;
  }

  private static int changes(Drill drill, @Nullable Drill before) {
    return before == null ? 0 : OneChange.between(drill, before);
  }
}
