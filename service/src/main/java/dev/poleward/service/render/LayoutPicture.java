package dev.poleward.service.render;

import dev.poleward.domain.layout.Layout;
import dev.poleward.service.render.Mark.Hold;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Locale;

/**
 * A layout from above, to scale, with its tape sheet: 12 at the top and the poles running down, as
 * on the clock face of a curve.
 */
public final class LayoutPicture {

  /** From here on the tape sheet stands beside the ground. */
  private static final int BESIDE_MIN = 720;

  /** From here on a picture grows as a whole. */
  private static final int LAID_OUT_MAX = 960;

  private static final double BETWEEN = 24;
  private static final double GROUND_HEIGHT_MAX = 620;
  private static final double NORTH_RADIUS = 16;
  private static final double SCALE_BAR_MAX = 120;

  private final Layout layout;
  private final Sheet sheet = new Sheet(Studio.lettering());
  private final double width;
  private final double margin;
  private final boolean beside;

  private LayoutPicture(Layout layout, double width) {
    this.layout = layout;
    this.width = width;
    this.beside = width >= BESIDE_MIN;
    this.margin = beside ? 24 : 12;
  }

  /** The picture, {@code widthPixels} wide. */
  public static Picture of(Layout layout, int widthPixels) {
    double width = Math.min(widthPixels, LAID_OUT_MAX);
    LayoutPicture picture = new LayoutPicture(layout, width);
    double end = picture.draw();
    return Picture.onPaper(
        LayoutWords.title(layout),
        LayoutWords.inWords(layout),
        picture.sheet,
        width,
        end,
        widthPixels / width);
  }

  private double draw() {
    double inner = width - 2 * margin;
    double top = drawHead(margin, inner);
    double groundWidth = beside ? inner * 0.58 : inner;
    GroundPlan plan = GroundPlan.of(layout, margin, top, groundWidth, GROUND_HEIGHT_MAX);
    new GroundMarks(sheet, layout, plan).draw();
    double foot = drawFoot(plan, top + plan.height() + 6);
    double left = beside ? margin + groundWidth + BETWEEN : margin;
    double tapesTop = beside ? top : foot + 12;
    double tapesWidth = width - margin - left;
    double tapes =
        sheet.paragraph(LayoutWords.pegs(layout), left, tapesTop, tapesWidth, Type.NOTE, Ink.QUIET);
    tapes = TapeSheet.draw(sheet, layout, left, tapes + 6, tapesWidth);
    for (String warning : LayoutWords.warnings(layout)) {
      tapes = sheet.paragraph("! " + warning, left, tapes + 4, tapesWidth, Type.TEXT, Ink.BLACK);
    }
    return Math.max(foot, tapes) + margin;
  }

  private double drawHead(double left, double inner) {
    double y =
        sheet.paragraph(LayoutWords.title(layout), left, margin, inner, Type.TITLE, Ink.BLACK);
    y = sheet.paragraph(LayoutWords.comesFrom(layout), left, y, inner, Type.TEXT, Ink.BLACK);
    y = sheet.paragraph(LayoutWords.way(layout), left, y, inner, Type.NOTE, Ink.QUIET);
    return y + 8;
  }

  /** The scale, and north where it is known. */
  private double drawFoot(GroundPlan plan, double top) {
    double metres = scaleBarMetres(plan.scale());
    double barLeft = margin + 8;
    double barRight = barLeft + metres * plan.scale();
    double y = top + 10;
    sheet.line(barLeft, y, barRight, y, Ink.BLACK, Pen.THRESHOLD);
    sheet.line(barLeft, y - 5, barLeft, y + 5, Ink.BLACK, Pen.WHISKER);
    sheet.line(barRight, y - 5, barRight, y + 5, Ink.BLACK, Pen.WHISKER);
    sheet.words(
        String.format(Locale.ROOT, metres < 1 ? "%.1f m" : "%.0f m", metres),
        barRight + 12,
        y + Type.NOTE.ascent() / 2,
        Hold.LEFT,
        Type.NOTE,
        Ink.BLACK);
    Double towards = layout.question().polesRunTowards();
    double end = y + 14;
    if (towards != null) {
      drawNorth(new Point2D.Double(margin + plan.width() - 40, y + 12), towards);
      end = y + 12 + NORTH_RADIUS + 16;
    }
    return sheet.paragraph(
        "12 is at the top and the poles run towards 6. Dotted: tapes. Ringed: pole 1. Take pegs and"
            + " tapes away before a dog runs.",
        margin,
        end,
        beside ? plan.width() : width - 2 * margin,
        Type.NOTE,
        Ink.QUIET);
  }

  /** The longest round number of metres that is no longer than it should be. */
  private static double scaleBarMetres(double scale) {
    double best = 0.5;
    for (double metres : new double[] {1, 2, 5, 10, 20}) {
      if (metres * scale <= SCALE_BAR_MAX) {
        best = metres;
      }
    }
    return best;
  }

  private void drawNorth(Point2D at, double polesRunTowards) {
    // Down on the sheet is where the poles run.
    Dial dial = new Dial(at.getX(), at.getY());
    double north = 180 - polesRunTowards;
    Point2D tip = dial.at(north, NORTH_RADIUS);
    Point2D tail = dial.at(north + 180, NORTH_RADIUS);
    Point2D left = dial.at(north - 150, 9);
    Point2D right = dial.at(north + 150, 9);
    sheet.line(tail.getX(), tail.getY(), tip.getX(), tip.getY(), Ink.BLACK, Pen.WHISKER);
    Path2D head = new Path2D.Double();
    head.moveTo(tip.getX(), tip.getY());
    head.lineTo(left.getX(), left.getY());
    head.lineTo(right.getX(), right.getY());
    head.closePath();
    sheet.fill(head, Ink.BLACK);
    sheet.words(
        "N",
        at.getX() + NORTH_RADIUS + 10,
        at.getY() + Type.SAYING.ascent() / 2,
        Hold.LEFT,
        Type.SAYING,
        Ink.BLACK);
  }
}
