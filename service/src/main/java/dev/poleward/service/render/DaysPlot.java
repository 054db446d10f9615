package dev.poleward.service.render;

import dev.poleward.domain.pace.DayPace;
import dev.poleward.domain.pace.PaceOfKind;
import dev.poleward.service.render.Mark.Hold;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;

/** The median time of each day, with the line of the trend. */
final class DaysPlot {

  private static final double RIGHT = 10;
  private static final double INSET = 12;
  private static final double RADIUS = 4.5;
  private static final double LABEL_WIDTH = 64;
  private static final int LABELS_MAX = 5;
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

  private DaysPlot() {}

  /** Draws it; gives where it ends. */
  static double draw(Sheet sheet, SideStyle style, PaceOfKind pace, Stretch across, double top) {
    List<DayPace> days = pace.days();
    double least = days.stream().mapToDouble(DayPace::seconds).min().orElse(0);
    double greatest = days.stream().mapToDouble(DayPace::seconds).max().orElse(1);
    double room = Math.max(0.05, 0.15 * (greatest - least));
    ValuePlot plot =
        new ValuePlot(
            sheet,
            ValueAxis.around(Math.max(0, least - room), greatest + room, " s"),
            across,
            RIGHT,
            top);
    LocalDate first = days.getFirst().day();
    LocalDate last = days.getLast().day();
    plot.drawGrid();
    days.forEach(
        day -> {
          double x = x(plot, first, last, day.day());
          sheet.fill(style.marker(x, plot.y(day.seconds()), RADIUS), style.ink());
        });
    if (pace.trend() != null) {
      sheet.line(
          x(plot, first, last, first),
          plot.y(pace.trendOn(first)),
          x(plot, first, last, last),
          plot.y(pace.trendOn(last)),
          Ink.BLACK,
          Pen.LEVEL);
    }
    plot.drawAxes();
    return drawDays(sheet, plot, first, last);
  }

  private static double x(ValuePlot plot, LocalDate first, LocalDate last, LocalDate day) {
    Stretch across = plot.across();
    long all = ChronoUnit.DAYS.between(first, last);
    double share = all == 0 ? 0.5 : (double) ChronoUnit.DAYS.between(first, day) / all;
    return across.left() + INSET + share * (across.width() - 2 * INSET);
  }

  private static double drawDays(Sheet sheet, ValuePlot plot, LocalDate first, LocalDate last) {
    double dayLine = plot.bottom() + 10 + Type.SMALL.ascent();
    double yearLine = dayLine + Type.SMALL.leading();
    long all = ChronoUnit.DAYS.between(first, last);
    long room = Math.min(LABELS_MAX, (long) (plot.across().width() / LABEL_WIDTH));
    long every = Math.max(1, (long) Math.ceil((all + 1.0) / Math.max(1, room)));
    int yearBefore = 0;
    for (long day = 0; day <= all; day += every) {
      LocalDate date = first.plusDays(day);
      double x = x(plot, first, last, date);
      sheet.line(x, plot.bottom(), x, plot.bottom() + 5, Ink.BLACK, Pen.AXIS);
      sheet.words(date.format(DAY), x, dayLine, Hold.MIDDLE, Type.SMALL, Ink.BLACK);
      if (date.getYear() != yearBefore) {
        String year = Integer.toString(date.getYear());
        sheet.words(year, x, yearLine, Hold.MIDDLE, Type.SMALL, Ink.QUIET);
        yearBefore = date.getYear();
      }
    }
    return yearLine + Type.SMALL.descent();
  }
}
