package dev.poleward.domain.running;

import dev.poleward.domain.layout.LayoutQuestion;
import dev.poleward.domain.layout.Moves;
import dev.poleward.domain.layout.Piece;
import dev.poleward.domain.layout.Pieces;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.layout.Spot;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Pole 1 stays. Either the lead-in stays too and the line of poles swings about pole 1, or the line
 * stays and the lead-in is carried round it, whichever is less. Every pole keeps its number; what
 * is not needed lies at pole 1, and comes from there [C].
 *
 * <p>Where as many pieces stand before and after, that is as far as {@link Moves} carries them: of
 * two lines through pole 1 the poles are carried least in their order. Moves know no store, though,
 * and to bring and take away is free for them, which would make it the cheapest way to move.
 */
public final class SwungPoles implements Carrying {

  @Override
  public double metres(@Nullable Setup from, Setup to) {
    Pieces before = from == null ? null : pieces(from);
    Pieces after = pieces(to);
    double turn = turn(before, after);
    double lineSwings = poles(from, to, turn) + leadIns(before, after, turn);
    double lineStays = poles(from, to, 0) + leadIns(before, after, 0);
    return Math.min(lineSwings, lineStays);
  }

  private static Pieces pieces(Setup setup) {
    return Pieces.of(setup, LayoutQuestion.LEAD_IN_USUAL, LayoutQuestion.JUMP_WIDTH_USUAL);
  }

  /** Degrees by which the line has to turn if the lead-in is to stay. */
  private static double turn(@Nullable Pieces from, Pieces to) {
    return from == null || from.start() == null || to.start() == null
        ? 0
        : Spot.POLE_1.towards(from.start().spot()).degrees()
            - Spot.POLE_1.towards(to.start().spot()).degrees();
  }

  private static double poles(@Nullable Setup from, Setup to, double turn) {
    int standing = from == null ? 0 : from.poles();
    double metres = 0;
    for (int pole = 0; pole < Math.max(standing, to.poles()); pole++) {
      Spot before = new Spot(0, from == null || pole >= standing ? 0 : pole * from.spacing());
      Spot after = new Spot(0, pole >= to.poles() ? 0 : pole * to.spacing());
      metres += before.distanceTo(after.turned(turn));
    }
    return metres;
  }

  private static double leadIns(@Nullable Pieces from, Pieces to, double turn) {
    List<Piece> before = from == null ? List.of() : from.leadIn();
    List<Piece> after = to.leadIn();
    if (before.isEmpty()
        || after.isEmpty()
        || before.getFirst().kind() != after.getFirst().kind()) {
      return fromPoleOne(before) + fromPoleOne(after);
    }
    return Math.min(carried(before, after, turn), carried(before, after.reversed(), turn));
  }

  private static double carried(List<Piece> before, List<Piece> after, double turn) {
    double metres = 0;
    for (int piece = 0; piece < before.size(); piece++) {
      metres += before.get(piece).spot().distanceTo(after.get(piece).spot().turned(turn));
    }
    return metres;
  }

  private static double fromPoleOne(List<Piece> pieces) {
    return pieces.stream().mapToDouble(piece -> Spot.POLE_1.distanceTo(piece.spot())).sum();
  }
}
