package dev.poleward.service.render;

import dev.poleward.domain.layout.FeetAndInches;
import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.Pegs;
import dev.poleward.domain.layout.Piece;
import dev.poleward.service.render.Mark.Hold;
import java.util.List;
import java.util.Locale;

/** The tapes of a layout as a table: a line for each piece, metres above feet and inches. */
final class TapeSheet {

  private static final double SIDE_WIDTH = 44;
  private static final double BETWEEN = 8;
  private static final double TAPE_WIDTH_MIN = 84;

  private TapeSheet() {}

  /**
   * Draws it.
   *
   * @return where it ends
   */
  static double draw(Sheet sheet, Layout layout, double left, double top, double width) {
    double right = left + width;
    double b = right - SIDE_WIDTH;
    double a = b - Math.max(TAPE_WIDTH_MIN, (width - SIDE_WIDTH) * 0.34);
    double y = top + Type.NUMBER.ascent();
    head(sheet, "Piece", left, y, Hold.LEFT);
    head(sheet, "From A", a, y, Hold.RIGHT);
    head(sheet, "From B", b, y, Hold.RIGHT);
    head(sheet, "Side", right, y, Hold.RIGHT);
    y += Type.NUMBER.descent() + 5;
    sheet.line(left, y, right, y, Ink.BLACK, Pen.AXIS);
    for (Piece piece : layout.pieces().all()) {
      Pegs.Tapes tapes = layout.pegs().tapesTo(piece.spot());
      y += 3;
      List<String> name =
          Lines.of(
              sheet.lettering(),
              LayoutWords.shortName(piece),
              a - left - TAPE_WIDTH_MIN,
              Type.NOTE);
      double nameY = y;
      for (String line : name) {
        nameY += Type.NOTE.leading();
        sheet.words(line, left, nameY, Hold.LEFT, Type.NOTE, Ink.BLACK);
      }
      double metresY = y + Type.NOTE.leading();
      double feetY = metresY + Type.SMALL.leading();
      tape(sheet, tapes.fromA(), a, metresY, feetY);
      tape(sheet, tapes.fromB(), b, metresY, feetY);
      sheet.words(LayoutWords.side(tapes), right, metresY, Hold.RIGHT, Type.NOTE, Ink.BLACK);
      y = Math.max(nameY, feetY) + Type.SMALL.descent() + 3;
      sheet.line(left, y, right, y, Ink.GRID, Pen.GUIDE);
    }
    return y + BETWEEN;
  }

  private static void head(Sheet sheet, String text, double x, double y, Hold hold) {
    sheet.words(text, x, y, hold, Type.NUMBER, Ink.BLACK);
  }

  private static void tape(Sheet sheet, double metres, double x, double y, double below) {
    sheet.words(
        String.format(Locale.ROOT, "%.3f m", metres), x, y, Hold.RIGHT, Type.NUMBER, Ink.BLACK);
    sheet.words(
        FeetAndInches.ofMetres(metres).toString(), x, below, Hold.RIGHT, Type.SMALL, Ink.QUIET);
  }
}
