package dev.poleward.service.render;

import java.awt.geom.Rectangle2D;
import java.util.List;

/** What the marks of the curve picture mean. */
final class CurveLegend {

  private CurveLegend() {}

  static List<Legend.Entry> entries(MasteryWords words) {
    return List.of(
        new Legend.Entry(
            CurveLegend::observed, words.shareSeen() + ", with 95% interval; larger: weighs more"),
        new Legend.Entry(CurveLegend::fitted, "fitted curve with 95% band"),
        new Legend.Entry(
            (sheet, x, y) -> sheet.line(x - 20, y, x + 20, y, Ink.FAINT, Pen.DOTTED),
            "steps without a curve"),
        new Legend.Entry(
            (sheet, x, y) -> sheet.line(x - 20, y, x + 20, y, Ink.BLACK, Pen.LEVEL),
            "level " + words.level()),
        new Legend.Entry(CurveLegend::threshold, "threshold with 95% limits"));
  }

  private static void observed(Sheet sheet, double x, double y) {
    ObservedMark.draw(sheet, SideStyle.POLE, x - 11, y - 10, y, y + 10, 2);
    ObservedMark.draw(sheet, SideStyle.GAP, x + 9, y - 11, y, y + 11, 16);
  }

  private static void fitted(Sheet sheet, double x, double y) {
    Rectangle2D band = new Rectangle2D.Double(x - 20, y - 8, 40, 16);
    sheet.fill(band, SideStyle.POLE.pale());
    sheet.draw(band, SideStyle.POLE.ink(), Pen.GUIDE);
    sheet.line(x - 20, y, x + 20, y, SideStyle.POLE.ink(), SideStyle.POLE.curve());
  }

  private static void threshold(Sheet sheet, double x, double y) {
    sheet.line(x - 16, y, x + 16, y, Ink.BLACK, Pen.LIMITS);
    sheet.line(x - 16, y - 7, x - 16, y + 7, Ink.BLACK, Pen.THRESHOLD);
    sheet.line(x + 16, y - 7, x + 16, y + 7, Ink.BLACK, Pen.THRESHOLD);
    ThresholdMark.diamond(sheet, x, y);
  }
}
