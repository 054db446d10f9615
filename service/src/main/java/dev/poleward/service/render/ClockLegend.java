package dev.poleward.service.render;

import java.awt.geom.Rectangle2D;
import java.util.List;

/** What the marks of the clock face mean. */
final class ClockLegend {

  private ClockLegend() {}

  static List<Legend.Entry> entries(MasteryWords words) {
    return List.of(
        new Legend.Entry(
            ClockLegend::bar, words.shareSeen() + ", in % by the bar; line: 95% interval"),
        new Legend.Entry(
            ClockLegend::rim,
            "rim: fitted share, 100% outside, with 95% band; thin line: " + words.level()),
        new Legend.Entry(ClockLegend::threshold, "threshold with 95% limits"),
        new Legend.Entry(
            ClockLegend::poles,
            "seen from above: pole 1 and the others; the dog comes from the rim"));
  }

  private static void bar(Sheet sheet, double x, double y) {
    Rectangle2D whole = new Rectangle2D.Double(x - 20, y - 7, 40, 14);
    sheet.fill(whole, SideStyle.POLE.pale());
    sheet.fillBox(x - 20, y - 7, 27, 14, SideStyle.POLE.ink());
    sheet.draw(whole, SideStyle.POLE.ink(), Pen.GUIDE);
    sheet.line(x - 6, y, x + 15, y, Ink.PAPER, Pen.LIMITS);
    sheet.line(x - 6, y, x + 15, y, Ink.BLACK, Pen.WHISKER);
  }

  private static void rim(Sheet sheet, double x, double y) {
    Rectangle2D band = new Rectangle2D.Double(x - 20, y - 8, 40, 16);
    sheet.fill(band, SideStyle.GAP.pale());
    sheet.draw(band, SideStyle.GAP.ink(), Pen.GUIDE);
    sheet.line(x - 20, y + 2, x + 20, y + 2, SideStyle.GAP.ink(), SideStyle.GAP.curve());
    sheet.line(x - 20, y - 4, x + 20, y - 4, Ink.BLACK, Pen.GUIDE);
  }

  private static void threshold(Sheet sheet, double x, double y) {
    sheet.line(x - 16, y, x + 16, y, Ink.BLACK, Pen.LIMITS);
    sheet.line(x - 16, y - 7, x - 16, y + 7, Ink.BLACK, Pen.THRESHOLD);
    sheet.line(x + 16, y - 7, x + 16, y + 7, Ink.BLACK, Pen.THRESHOLD);
    ThresholdMark.diamond(sheet, x, y);
  }

  private static void poles(Sheet sheet, double x, double y) {
    for (int pole = 0; pole < 3; pole++) {
      var dot = new java.awt.geom.Ellipse2D.Double(x - 19 + pole * 15, y - 4.5, 9, 9);
      sheet.fill(dot, pole == 0 ? Ink.BLACK : Ink.PAPER);
      sheet.draw(dot, Ink.BLACK, Pen.THIN);
    }
  }
}
