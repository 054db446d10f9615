package dev.poleward.service.render;

import java.util.ArrayList;
import java.util.List;

/**
 * A picture that is drawn and not yet painted.
 *
 * @param title what it is of
 * @param inWords all that it says, in sentences, for whoever does not see it
 * @param width units of the sheet
 * @param height units of the sheet
 * @param scale pixels (of CSS) to a unit
 * @param marks in the order in which they lie on each other
 */
public record Picture(
    String title, String inWords, double width, double height, double scale, List<Mark> marks) {

  /** Narrowest, in pixels of CSS. */
  public static final int WIDTH_MIN = 320;

  /** Widest, in pixels of CSS. */
  public static final int WIDTH_MAX = 1_200;

  /** Unless asked, in pixels of CSS. */
  public static final int WIDTH_DEFAULT = 800;

  /** Keeps the marks from changing. */
  public Picture {
    marks = List.copyOf(marks);
  }

  /** What is on a sheet, on white paper of that size. */
  static Picture onPaper(
      String title, String inWords, Sheet sheet, double width, double height, double scale) {
    double whole = Math.ceil(height);
    Sheet paper = new Sheet(sheet.lettering());
    paper.fillBox(0, 0, width, whole, Ink.PAPER);
    List<Mark> marks = new ArrayList<>(paper.marks());
    marks.addAll(sheet.marks());
    return new Picture(title, inWords, width, whole, scale, marks);
  }
}
