package dev.poleward.domain.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands, each piece in its place.
 *
 * @param line the line of poles
 * @param all the poles from the first to the last, then the lead-in
 * @param start where the dog comes from and which way it runs then; absent where no direction is
 *     said
 */
public record Pieces(PoleLine line, List<Piece> all, @Nullable Pose start) {

  /** Keeps the pieces from changing. */
  public Pieces {
    all = List.copyOf(all);
  }

  /**
   * The pieces of a setup.
   *
   * @param leadInDistance metres from the lead-in to pole 1, which holds where the setup says none
   * @param jumpWidth metres from wing to wing
   */
  public static Pieces of(Setup setup, double leadInDistance, double jumpWidth) {
    PoleLine line = new PoleLine(setup.poles(), setup.spacing());
    List<Piece> all = new ArrayList<>();
    for (int pole = 1; pole <= setup.poles(); pole++) {
      Spot spot = new Spot(0, (pole - 1) * setup.spacing());
      all.add(new Piece(Piece.Kind.POLE, "pole-" + pole, spot));
    }
    if (setup.approach() == null) {
      return new Pieces(line, all, null);
    }
    Heading towardsPole = new Heading(setup.approach().entry().degrees());
    double away = setup.leadInDistance() == null ? leadInDistance : setup.leadInDistance();
    Spot at = Spot.POLE_1.ahead(towardsPole, -away);
    return switch (setup.leadIn()) {
      case NONE -> {
        all.add(new Piece(Piece.Kind.START, "start", at));
        yield new Pieces(line, all, new Pose(at, towardsPole));
      }
      case TUNNEL -> {
        all.add(new Piece(Piece.Kind.TUNNEL, "tunnel-exit", at));
        yield new Pieces(line, all, new Pose(at, towardsPole));
      }
      case JUMP -> {
        double turned = setup.jumpFacing() == null ? 0 : setup.jumpFacing();
        Heading over = new Heading(towardsPole.degrees() + turned);
        Spot left = at.ahead(over.left(), jumpWidth / 2);
        Spot right = at.ahead(over.right(), jumpWidth / 2);
        all.add(new Piece(Piece.Kind.WING, "jump-left", left));
        all.add(new Piece(Piece.Kind.WING, "jump-right", right));
        yield new Pieces(line, all, new Pose(at, over));
      }
    };
  }

  /** What the dog comes from, without the poles. */
  public List<Piece> leadIn() {
    return all.stream().filter(each -> each.kind() != Piece.Kind.POLE).toList();
  }

  /** The same, when the ground turns about pole 1, in degrees clockwise. */
  Pieces turned(double degrees) {
    return new Pieces(
        line,
        all.stream()
            .map(each -> new Piece(each.kind(), each.name(), each.spot().turned(degrees)))
            .toList(),
        start == null
            ? null
            : new Pose(
                start.spot().turned(degrees), new Heading(start.heading().degrees() + degrees)));
  }
}
