package dev.poleward.service.render;

/** The head of every picture of a dog: its name, what is shown, and as of when. */
final class DogHead {

  private static final int NAME_LINES_MAX = 2;

  private DogHead() {}

  /**
   * Writes it.
   *
   * @param dog the id, which stands in the place of a name that there are no letters for
   * @return where it ends
   */
  static double draw(
      Sheet sheet,
      String dog,
      String callName,
      String about,
      String aged,
      double x,
      double top,
      double width) {
    double y = sheet.name(callName, dog, new Stretch(x, width), top, Type.TITLE, NAME_LINES_MAX);
    y = sheet.paragraph(about, x, y, width, Type.TEXT, Ink.BLACK);
    return sheet.paragraph(aged, x, y, width, Type.NOTE, Ink.QUIET);
  }

  static double draw(
      Sheet sheet, DogInPicture of, String about, String aged, Stretch across, double top) {
    return draw(sheet, of.dog(), of.callName(), about, aged, across.left(), top, across.width());
  }
}
