package dev.poleward.service.render;

import java.awt.geom.Rectangle2D;

/** How kinds of rewards look: a pattern tells them apart, not a colour. */
enum RewardLook {
  /** Full. */
  FOOD,
  /** Hatched. */
  TOY;

  private static final double HATCH = 6;

  void draw(Sheet sheet, Rectangle2D bar) {
    switch (this) {
      case FOOD -> sheet.fill(bar, Ink.QUIET);
      case TOY -> {
        sheet.fill(bar, Ink.PAPER);
        hatch(sheet, bar);
        sheet.draw(bar, Ink.BLACK, Pen.THIN);
      }
    }
  }

  private static void hatch(Sheet sheet, Rectangle2D bar) {
    double height = bar.getHeight();
    for (double at = HATCH - height; at < bar.getWidth(); at += HATCH) {
      double from = Math.max(0, -at);
      double to = Math.min(height, bar.getWidth() - at);
      sheet.line(
          bar.getX() + at + from,
          bar.getMaxY() - from,
          bar.getX() + at + to,
          bar.getMaxY() - to,
          Ink.BLACK,
          Pen.THIN);
    }
  }
}
