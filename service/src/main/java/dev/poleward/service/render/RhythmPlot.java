package dev.poleward.service.render;

import dev.poleward.domain.pace.Rhythm;
import dev.poleward.service.render.Mark.Hold;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The median time of each gap, with the distance from it that half of the runs keep. */
final class RhythmPlot {

  private static final double RIGHT = 10;
  private static final double RADIUS = 4.5;
  private static final double CAP = 5;
  private static final double POINTER = 9;

  private RhythmPlot() {}

  /** Draws it; gives where it ends. */
  static double draw(
      Sheet sheet, SideStyle style, @Nullable Rhythm rhythm, Stretch across, double top) {
    List<Rhythm.Gap> gaps = rhythm == null ? List.of() : rhythm.gaps();
    double least =
        gaps.stream()
            .mapToDouble(gap -> gap.seconds().median() - gap.seconds().mad())
            .min()
            .orElse(0);
    double greatest =
        gaps.stream()
            .mapToDouble(gap -> gap.seconds().median() + gap.seconds().mad())
            .max()
            .orElse(0.5);
    double room = Math.max(0.02, 0.2 * (greatest - least));
    ValueAxis axis = ValueAxis.around(Math.max(0, least - room), greatest + room, " s");
    ValuePlot plot = new ValuePlot(sheet, axis, across, RIGHT, top);
    plot.drawGrid();
    if (gaps.isEmpty()) {
      plot.drawEmpty("no gap times");
    }
    double slot = plot.across().width() / Math.max(1, gaps.size());
    double line = plot.bottom() + 11 + Type.NUMBER.ascent();
    List<Rectangle2D> taken = new ArrayList<>();
    for (Rhythm.Gap gap : gaps) {
      double x = plot.across().left() + (gap.gap() - 0.5) * slot;
      drawGap(sheet, style, plot, gap, x);
      sheet.line(x, plot.bottom(), x, plot.bottom() + 4, Ink.BLACK, Pen.AXIS);
    }
    plot.drawAxes();
    // What is slow is named first, as it is what one looks for.
    gaps.stream()
        .sorted(Comparator.comparing(Rhythm.Gap::slow).reversed())
        .forEach(
            gap ->
                sheet.wordsIfFree(
                    taken,
                    TimesWords.poles(gap),
                    plot.across().left() + (gap.gap() - 0.5) * slot,
                    line,
                    Hold.MIDDLE,
                    gap.slow() ? Type.NUMBER : Type.SMALL,
                    Ink.BLACK));
    plot.nameRow("gap", line);
    return line + Type.NUMBER.descent();
  }

  private static void drawGap(
      Sheet sheet, SideStyle style, ValuePlot plot, Rhythm.Gap gap, double x) {
    double median = gap.seconds().median();
    double upper = plot.y(median + gap.seconds().mad());
    double lower = plot.y(median - gap.seconds().mad());
    sheet.line(x, lower, x, upper, style.ink(), Pen.WHISKER);
    sheet.line(x - CAP, lower, x + CAP, lower, style.ink(), Pen.WHISKER);
    sheet.line(x - CAP, upper, x + CAP, upper, style.ink(), Pen.WHISKER);
    Shape marker = style.marker(x, plot.y(median), RADIUS);
    sheet.fill(marker, style.ink());
    sheet.draw(marker, Ink.PAPER, Pen.THIN);
    if (gap.slow()) {
      slow(sheet, x, Math.min(upper, plot.y(median) - RADIUS) - 4);
    }
  }

  /** What marks a slow gap: a full triangle that points at it from above. */
  static void slow(Sheet sheet, double x, double tip) {
    Path2D pointer = new Path2D.Double();
    pointer.moveTo(x, tip);
    pointer.lineTo(x - 6, tip - POINTER);
    pointer.lineTo(x + 6, tip - POINTER);
    pointer.closePath();
    sheet.fill(pointer, Ink.BLACK);
  }
}
