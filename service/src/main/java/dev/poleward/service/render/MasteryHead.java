package dev.poleward.service.render;

/** The head of every picture of angle mastery: the dog's name and what is counted. */
final class MasteryHead {

  private static final int NAME_LINES_MAX = 2;

  private MasteryHead() {}

  /**
   * Writes it.
   *
   * @return where it ends
   */
  static double draw(Sheet sheet, DogCurve of, double x, double top, double width) {
    MasteryWords words = new MasteryWords(of);
    double y = top;
    boolean first = true;
    for (String line :
        Lines.cut(sheet.lettering(), of.callName(), width, Type.TITLE, NAME_LINES_MAX)) {
      // Where there are no letters for the name, the id stands in its place, once.
      sheet.words(line, first ? of.dog() : "", x, y + Type.TITLE.ascent(), Type.TITLE, Ink.BLACK);
      y += Type.TITLE.leading();
      first = false;
    }
    y = sheet.paragraph(words.about(), x, y, width, Type.TEXT, Ink.BLACK);
    return sheet.paragraph(words.aged(), x, y, width, Type.NOTE, Ink.QUIET);
  }
}
