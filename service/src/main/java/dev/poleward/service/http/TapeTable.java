package dev.poleward.service.http;

import dev.poleward.domain.layout.FeetAndInches;
import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.Pegs;
import dev.poleward.domain.layout.Piece;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.render.CsvTable;
import java.util.List;

/** The tape sheet of a layout as a table: a row for each piece. */
final class TapeTable {

  private static final CsvTable TABLE =
      new CsvTable(
          List.of(
              "piece",
              "x",
              "y",
              "metresFromPegA",
              "metresFromPegB",
              "feetInchesFromPegA",
              "feetInchesFromPegB",
              "side",
              "pegsApart"));

  private TapeTable() {}

  static String of(Layout layout) {
    return TABLE.of(
        layout.pieces().all().stream().map(piece -> row(layout.pegs(), piece)).toList());
  }

  private static CsvTable.Row row(Pegs pegs, Piece piece) {
    Pegs.Tapes tapes = pegs.tapesTo(piece.spot());
    return column ->
        switch (column) {
          case "piece" -> piece.name();
          case "x" -> Thousandths.of(piece.spot().x());
          case "y" -> Thousandths.of(piece.spot().y());
          case "metresFromPegA" -> tapes.fromA();
          case "metresFromPegB" -> tapes.fromB();
          case "feetInchesFromPegA" -> FeetAndInches.ofMetres(tapes.fromA());
          case "feetInchesFromPegB" -> FeetAndInches.ofMetres(tapes.fromB());
          case "side" -> Writing.wireName(tapes.side());
          default -> Thousandths.of(pegs.apart());
        };
  }
}
