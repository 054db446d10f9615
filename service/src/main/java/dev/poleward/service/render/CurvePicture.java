package dev.poleward.service.render;

import dev.poleward.domain.mastery.AnglePoint;
import dev.poleward.domain.mastery.SideMastery;
import java.util.List;

/**
 * The angle-mastery curve: the share made against the size of the entry angle, a panel for each
 * entry side.
 */
final class CurvePicture {

  /** From here on the panels stand side by side. */
  private static final int SIDE_BY_SIDE_MIN = 720;

  /** From here on a picture grows as a whole. */
  private static final int LAID_OUT_MAX = 960;

  private static final double BETWEEN = 28;

  /** The axis ends at a multiple of it. */
  private static final double AXIS_STEP_DEGREES = 30;

  private static final double AXIS_MIN_DEGREES = 60;

  private static final double PLOT_HEIGHT_MAX = 300;

  /** So low that the rest of a dog's page finds room beside it. */
  private static final double STRIP_PLOT_HEIGHT = 130;

  private CurvePicture() {}

  static Picture of(DogCurve of, int widthPixels, Lettering lettering) {
    double width = Math.min(widthPixels, LAID_OUT_MAX);
    boolean beside = width >= SIDE_BY_SIDE_MIN;
    double margin = beside ? 24 : 14;
    double inner = width - 2 * margin;
    MasteryWords words = new MasteryWords(of);

    Sheet sheet = new Sheet(lettering);
    double y = MasteryHead.draw(sheet, of, margin, margin, inner) + 14;
    double panelWidth = beside ? (inner - BETWEEN) / 2 : inner;
    List<CurvePanel> panels = panels(sheet, of, panelWidth, PLOT_HEIGHT_MAX);
    y = beside ? beside(panels, margin, y, panelWidth) : below(panels, margin, y);
    y = Legend.draw(sheet, CurveLegend.entries(words), margin, y + 16, inner);
    return MasteryPictures.onPaper(words, sheet, width, y + margin, widthPixels / width);
  }

  /** Both panels beside each other and nothing else, for a page that says whose they are. */
  static Picture strip(DogCurve of, double width, Lettering lettering) {
    Sheet sheet = new Sheet(lettering);
    double panelWidth = (width - BETWEEN) / 2;
    double end = beside(panels(sheet, of, panelWidth, STRIP_PLOT_HEIGHT), 0, 0, panelWidth);
    return MasteryPictures.onPaper(new MasteryWords(of), sheet, width, end + 6, 1);
  }

  private static List<CurvePanel> panels(
      Sheet sheet, DogCurve of, double panelWidth, double plotHeightMax) {
    MasteryWords words = new MasteryWords(of);
    double greatest = axisEnd(of.curve().sides());
    return of.curve().sides().stream()
        .map(side -> new CurvePanel(sheet, words, side, greatest, panelWidth, plotHeightMax))
        .toList();
  }

  private static double beside(List<CurvePanel> panels, double x, double top, double width) {
    double head = panels.stream().mapToDouble(CurvePanel::headHeight).max().orElse(0);
    double end = top;
    double left = x;
    for (CurvePanel panel : panels) {
      panel.drawHead(left, top);
      end = panel.drawPlot(left, top + head);
      left += width + BETWEEN;
    }
    return end;
  }

  private static double below(List<CurvePanel> panels, double x, double top) {
    double y = top;
    for (CurvePanel panel : panels) {
      panel.drawHead(x, y);
      y = panel.drawPlot(x, y + panel.headHeight()) + 18;
    }
    return y - 10;
  }

  /** The same for all panels, so that they can be compared. */
  private static double axisEnd(List<SideMastery> sides) {
    double greatest =
        sides.stream()
            .flatMap(side -> side.points().stream())
            .mapToDouble((AnglePoint point) -> point.angle().size())
            .max()
            .orElse(0);
    return Math.max(AXIS_MIN_DEGREES, Math.ceil(greatest / AXIS_STEP_DEGREES) * AXIS_STEP_DEGREES);
  }
}
