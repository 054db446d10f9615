package dev.poleward.service.render;

import dev.poleward.service.render.Mark.Hold;
import java.util.List;

/** What the marks of a picture mean: a sample of each and a few words. */
final class Legend {

  /** How wide a sample is at most. */
  static final double SAMPLE = 40;

  private static final double ROW = 26;
  private static final double GAP = 8;

  private Legend() {}

  /** Draws a sample round (x, y), no wider than {@link #SAMPLE}. */
  interface Sample {
    void draw(Sheet sheet, double x, double y);
  }

  /** One mark. */
  record Entry(Sample sample, String text) {}

  /**
   * Draws a legend, entries side by side as far as there is room.
   *
   * @return where it ends
   */
  static double draw(Sheet sheet, List<Entry> entries, double x, double top, double width) {
    double left = x;
    double y = top + ROW / 2;
    for (Entry entry : entries) {
      List<String> lines =
          Lines.of(sheet.lettering(), entry.text(), width - SAMPLE - GAP, Type.NOTE);
      double wide = width(sheet, lines);
      if (left > x && left + wide > x + width) {
        left = x;
        y += ROW;
      }
      entry.sample().draw(sheet, left + SAMPLE / 2, y);
      double base = y + Type.NOTE.ascent() / 2;
      for (String line : lines) {
        sheet.words(line, left + SAMPLE + GAP, base, Hold.LEFT, Type.NOTE, Ink.BLACK);
        base += Type.NOTE.leading();
      }
      y += (lines.size() - 1) * Type.NOTE.leading();
      left += wide + 2 * GAP;
    }
    return y + ROW / 2;
  }

  private static double width(Sheet sheet, List<String> lines) {
    return SAMPLE
        + GAP
        + lines.stream()
                .mapToDouble(line -> sheet.lettering().width(line, Type.NOTE))
                .max()
                .orElse(0)
            * Room.WIDER;
  }
}
