package dev.poleward.load.figures;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table of figures in Markdown. Every row says when, where and with which settings, so that it
 * can be pasted below rows of other runs. For one thread.
 */
public final class Report {

  private static final List<String> FIRST = List.of("date", "machine", "settings");

  private final String program;
  private final String settings;
  private final List<String> columns;
  private final List<List<String>> rows = new ArrayList<>();

  /** A table without rows; says on the way what begins. */
  public Report(String program, String settings, String... columns) {
    this.program = program;
    this.settings = settings;
    this.columns = List.of(columns);
    note("%s on %s: %s", program, ThisMachine.describe(), settings);
  }

  /** Adds a row, a figure a column. */
  public void row(Object... figures) {
    if (figures.length != columns.size()) {
      throw new IllegalArgumentException(
          "%d figures for %d columns".formatted(figures.length, columns.size()));
    }
    rows.add(Stream.of(figures).map(String::valueOf).toList());
  }

  /** Says how it goes, apart from the table. */
  public static void note(String format, Object... values) {
    System.out.println(format.formatted(values));
  }

  /** Prints the table. */
  public void print() {
    System.out.println();
    System.out.println("### " + program);
    System.out.println();
    System.out.println(line(Stream.concat(FIRST.stream(), columns.stream()).toList()));
    System.out.println(line(Collections.nCopies(FIRST.size() + columns.size(), "---")));
    String today = LocalDate.now(ZoneOffset.UTC).toString();
    for (List<String> row : rows) {
      System.out.println(
          line(
              Stream.concat(Stream.of(today, ThisMachine.describe(), settings), row.stream())
                  .toList()));
    }
    System.out.flush();
  }

  private static String line(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |";
  }
}
