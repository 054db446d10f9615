package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.BoundedPath;
import dev.poleward.domain.layout.FeetAndInches;
import dev.poleward.domain.layout.GroundFit;
import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.LayoutAdvice;
import dev.poleward.domain.layout.Move;
import dev.poleward.domain.layout.Moves;
import dev.poleward.domain.layout.Pegs;
import dev.poleward.domain.layout.Piece;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.layout.Spot;
import dev.poleward.domain.layout.TurningTable;
import dev.poleward.service.codec.SetupCodec;
import dev.poleward.service.codec.Writing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A layout as it is shown: metres to the millimetre, degrees to the thousandth. */
final class LayoutShape {

  private LayoutShape() {}

  static ObjectNode of(Layout layout) {
    return new Writing()
        .put("setup", SetupCodec.write(layout.question().setup()))
        .putObjects("pieces", pieces(layout), each -> each)
        .put("pegsApart", Thousandths.of(layout.pegs().apart()))
        .put("path", layout.path() == null ? null : path(layout.path()))
        .put("turning", turning(layout))
        .put("ground", layout.fit() == null ? null : ground(layout.fit()))
        .put("moves", layout.moves() == null ? null : moves(layout.moves()))
        .putObjects("warnings", layout.warnings(), each -> advice(LayoutAdvice.of(each)))
        .done();
  }

  private static List<ObjectNode> pieces(Layout layout) {
    List<ObjectNode> pieces = new ArrayList<>();
    Pegs pegs = layout.pegs();
    for (Piece piece : layout.pieces().all()) {
      Pegs.Tapes tapes = pegs.tapesTo(piece.spot());
      pieces.add(
          piece(
              piece.name(),
              piece.spot(),
              List.of(tape("peg-a", tapes.fromA()), tape("peg-b", tapes.fromB())),
              tapes.side()));
    }
    pieces.add(piece("peg-a", pegs.a(), List.of(), null));
    pieces.add(piece("peg-b", pegs.b(), List.of(tape("peg-a", pegs.apart())), null));
    return pieces;
  }

  private static ObjectNode piece(
      String name, Spot spot, List<ObjectNode> tapes, Pegs.@Nullable Side side) {
    return new Writing()
        .put("piece", name)
        .put("x", Thousandths.of(spot.x()))
        .put("y", Thousandths.of(spot.y()))
        .putObjects("tapes", tapes, each -> each)
        .put("side", side)
        .done();
  }

  private static ObjectNode tape(String from, double metres) {
    return new Writing()
        .put("from", from)
        .put("metres", Thousandths.of(metres))
        .putPrinted("feetInches", FeetAndInches.ofMetres(metres))
        .done();
  }

  private static ObjectNode path(BoundedPath path) {
    return new Writing()
        .put("radius", path.radius())
        .put("length", Thousandths.of(path.length()))
        .put("turn", Thousandths.of(path.turn()))
        .putObjects(
            "parts",
            IntStream.range(0, path.parts().size())
                .boxed()
                .filter(i -> path.parts().get(i) > 0)
                .toList(),
            i ->
                new Writing()
                    .put("turn", path.word().turns().get(i))
                    .put("metres", Thousandths.of(path.parts().get(i)))
                    .done())
        .done();
  }

  private static @Nullable ObjectNode turning(Layout layout) {
    return layout.turning() == null
        ? null
        : turning(new Writing(), layout.pieces().line(), layout.turning());
  }

  /** Adds a turning table. */
  static ObjectNode turning(Writing shape, PoleLine line, TurningTable table) {
    return shape
        .put("degreesEach", Thousandths.of(table.degreesEach()))
        .put("rungsPerSide", table.rungs().size())
        .put("setups", table.setups())
        .put("lastStep", Thousandths.of(table.lastStep()))
        .put("carried", Thousandths.of(table.carried(line)))
        .putObjects(
            "rungs",
            table.rungs(),
            rung ->
                new Writing()
                    .put("degrees", Thousandths.of(rung.degrees()))
                    .put("lastPoleMoves", Thousandths.of(rung.lastPoleMoves()))
                    .put("swing", Thousandths.of(rung.swing()))
                    .done())
        .done();
  }

  private static ObjectNode ground(GroundFit fit) {
    return new Writing()
        .put("fits", fit.fits())
        .put("turnedBy", fit.turnedBy())
        .put("lengthNeeded", Thousandths.of(fit.lengthNeeded()))
        .put("widthNeeded", Thousandths.of(fit.widthNeeded()))
        .done();
  }

  private static ObjectNode moves(Moves moves) {
    return new Writing()
        .put("stays", moves.stays())
        .put("metres", Thousandths.of(moves.metres()))
        .putObjects("moves", moves.moves(), LayoutShape::move)
        .done();
  }

  private static ObjectNode move(Move move) {
    Writing writing = new Writing();
    switch (move) {
      case Move.Carry(Piece from, Piece to, double metres) ->
          writing
              .put("piece", from.name())
              .put("becomes", to.name())
              .put("metres", Thousandths.of(metres));
      case Move.Bring(Piece to) -> writing.put("becomes", to.name());
      case Move.TakeAway(Piece from) -> writing.put("piece", from.name());
    }
    return writing.put("text", LayoutAdvice.text(move)).done();
  }

  private static ObjectNode advice(LayoutAdvice advice) {
    return new Writing().put("id", advice.id()).put("text", advice.text()).done();
  }
}
