package dev.poleward.service.render;

import java.util.List;

/** A text as a picture, for paper whose letters cannot write it. */
final class PaintedText {

  private static final int LINES_MAX = 4;
  private static final Type TYPE = Type.TEXT;

  private PaintedText() {}

  static Picture of(String text, double width, Lettering lettering) {
    Sheet sheet = new Sheet(lettering);
    List<String> lines = Lines.cut(lettering, text, width, TYPE, LINES_MAX);
    double widest = 1;
    double y = 0;
    for (String line : lines) {
      sheet.words(line, lettering.plain(line), 0, y + TYPE.ascent(), TYPE, Ink.BLACK);
      widest = Math.max(widest, lettering.width(line, TYPE));
      y += TYPE.leading();
    }
    return new Picture(text, text, Math.ceil(widest), Math.ceil(y), 1, sheet.marks());
  }
}
