package dev.poleward.domain.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds good places for two pegs: off the lines that the pieces stand on, so that nobody trips over
 * them where the dog runs; where there are such places, with tapes that cross at 30 to 150 degrees,
 * where an error counts for at most twice; and then with the shortest tapes.
 */
final class PegChoice {

  /** Metres around everything; more where that leaves no two places free. */
  private static final double MARGIN = 1.5;

  private static final double MARGIN_MAX = 100;
  private static final int PLACES_ACROSS = 9;
  private static final double CROSSING_ENOUGH = 0.5;

  /** Metres that a peg keeps from the line of poles, from the way to pole 1 and from the dog's. */
  private static final double OFF_THE_LINES = 1;

  private PegChoice() {}

  /**
   * The pegs for these pieces.
   *
   * @param path the dog's way; absent where none is known
   */
  static Pegs of(Pieces pieces, @Nullable BoundedPath path) {
    return of(pieces, path == null ? List.of() : path.spots(OFF_THE_LINES / 20), MARGIN);
  }

  private static Pegs of(Pieces pieces, List<Spot> run, double margin) {
    List<Spot> targets = pieces.all().stream().map(Piece::spot).toList();
    List<Spot> places =
        places(targets, margin).stream()
            .filter(place -> isOffTheLines(place, pieces))
            .filter(place -> isOff(place, run))
            .toList();
    if (places.size() < 2 && margin < MARGIN_MAX) {
      return of(pieces, run, 2 * margin);
    }
    Pegs best = null;
    double bestCrossing = -1;
    double bestTape = 0;
    for (int i = 0; i < places.size(); i++) {
      for (int j = i + 1; j < places.size(); j++) {
        Pegs pegs = new Pegs(places.get(i), places.get(j));
        double crossing = CROSSING_ENOUGH;
        double tape = pegs.apart();
        for (Spot target : targets) {
          crossing = Math.min(crossing, pegs.crossing(target));
          tape = Math.max(tape, longer(pegs, target));
          if (crossing < bestCrossing) {
            break;
          }
        }
        if (crossing > bestCrossing || (crossing == bestCrossing && tape < bestTape)) {
          best = pegs;
          bestCrossing = crossing;
          bestTape = tape;
        }
      }
    }
    if (best == null) {
      throw new IllegalStateException("unreachable: a grid wider than its lines has free places");
    }
    return best;
  }

  private static double longer(Pegs pegs, Spot target) {
    return Math.max(pegs.a().distanceTo(target), pegs.b().distanceTo(target));
  }

  /** A grid over the ground that the pieces take, and a bit around it; to the half metre. */
  private static List<Spot> places(List<Spot> targets, double margin) {
    double left = targets.stream().mapToDouble(Spot::x).min().orElse(0) - margin;
    double right = targets.stream().mapToDouble(Spot::x).max().orElse(0) + margin;
    double near = targets.stream().mapToDouble(Spot::y).min().orElse(0) - margin;
    double far = targets.stream().mapToDouble(Spot::y).max().orElse(0) + margin;
    // Where all stand on one line, there must be room beside it.
    double wide = Math.max(right - left, (far - near) / 2);
    double middle = (left + right) / 2;
    List<Spot> places = new ArrayList<>();
    for (int i = 0; i < PLACES_ACROSS; i++) {
      for (int j = 0; j < PLACES_ACROSS; j++) {
        places.add(
            new Spot(
                toHalfMetre(middle + wide * (i - (PLACES_ACROSS - 1) / 2.0) / (PLACES_ACROSS - 1)),
                toHalfMetre(near + (far - near) * j / (PLACES_ACROSS - 1))));
      }
    }
    return places.stream().distinct().toList();
  }

  private static double toHalfMetre(double metres) {
    return Math.rint(metres * 2) / 2;
  }

  private static boolean isOffTheLines(Spot place, Pieces pieces) {
    if (Math.abs(place.x()) < OFF_THE_LINES) {
      return false;
    }
    return pieces.leadIn().stream().allMatch(piece -> toLine(place, piece.spot()) >= OFF_THE_LINES);
  }

  private static boolean isOff(Spot place, List<Spot> run) {
    return run.stream().allMatch(spot -> spot.distanceTo(place) >= OFF_THE_LINES);
  }

  /** Metres from a place to the line through pole 1 and another place. */
  private static double toLine(Spot place, Spot through) {
    double length = Spot.POLE_1.distanceTo(through);
    return length == 0
        ? Spot.POLE_1.distanceTo(place)
        : Math.abs(through.x() * place.y() - through.y() * place.x()) / length;
  }
}
