package dev.poleward.service.render;

import dev.poleward.service.render.Mark.Hold;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * Months side by side below a plot.
 *
 * @param months how many, from 1
 */
record MonthAxis(YearMonth first, int months, Stretch across) {

  /** For a month's name, and the year below it. */
  private static final double LABEL_WIDTH = 38;

  /** The room of one month. */
  double slot() {
    return across.width() / months;
  }

  /** The middle of a month. */
  double x(YearMonth month) {
    return across.left() + (ChronoUnit.MONTHS.between(first, month) + 0.5) * slot();
  }

  /**
   * Names of months, as many as there is room for, and years where they begin.
   *
   * @return where they end
   */
  double draw(Sheet sheet, double top) {
    int every = (int) Math.ceil(LABEL_WIDTH / slot());
    double monthLine = top + 10 + Type.SMALL.ascent();
    double yearLine = monthLine + Type.SMALL.leading();
    int yearBefore = 0;
    for (int index = 0; index < months; index += every) {
      YearMonth month = first.plusMonths(index);
      double x = x(month);
      sheet.line(x, top, x, top + 5, Ink.BLACK, Pen.AXIS);
      String name = month.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
      sheet.words(name, x, monthLine, Hold.MIDDLE, Type.SMALL, Ink.BLACK);
      if (month.getYear() != yearBefore) {
        String year = Integer.toString(month.getYear());
        sheet.words(year, x, yearLine, Hold.MIDDLE, Type.SMALL, Ink.QUIET);
        yearBefore = month.getYear();
      }
    }
    return yearLine + Type.SMALL.descent();
  }
}
