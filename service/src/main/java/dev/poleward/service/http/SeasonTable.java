package dev.poleward.service.http;

import dev.poleward.domain.outlook.Season;
import dev.poleward.domain.outlook.Season.Amount;
import dev.poleward.domain.outlook.Season.Month;
import dev.poleward.service.render.CsvTable;
import java.time.YearMonth;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A season as a table (RFC 4180): a row for each month with anything in it. */
final class SeasonTable {

  private static final CsvTable TABLE =
      new CsvTable(
          List.of(
              "dog",
              "month",
              "sessions",
              "days",
              "reps",
              "clean",
              "gaps",
              "trials",
              "cleanTrials",
              "stagesDone",
              "rungsMovedOn"));

  private SeasonTable() {}

  static String of(String dog, Season season) {
    return TABLE.of(
        season.months().stream()
            .map(month -> (CsvTable.Row) column -> cell(dog, season, month, column))
            .toList());
  }

  private static @Nullable Object cell(String dog, Season season, Month month, String column) {
    Amount amount = month.amount();
    return switch (column) {
      case "dog" -> dog;
      case "month" -> month.month();
      case "sessions" -> amount.sessions();
      case "days" -> amount.days();
      case "reps" -> amount.reps();
      case "clean" -> amount.clean();
      case "gaps" -> amount.gaps();
      case "trials" -> amount.trials();
      case "cleanTrials" -> amount.cleanTrials();
      case "stagesDone" ->
          season.stages().stream()
              .filter(s -> YearMonth.from(s.day()).equals(month.month()))
              .count();
      case "rungsMovedOn" ->
          season.movedOn().stream()
              .filter(r -> YearMonth.from(r.day()).equals(month.month()))
              .count();
      default -> throw new IllegalArgumentException("no such column: " + column);
    };
  }
}
