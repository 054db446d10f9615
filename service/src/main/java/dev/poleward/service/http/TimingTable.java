package dev.poleward.service.http;

import dev.poleward.domain.pace.Pace;
import dev.poleward.domain.pace.PaceOfKind;
import dev.poleward.domain.pace.Rhythm;
import dev.poleward.domain.timing.MedianLimits;
import dev.poleward.domain.timing.TheilSen;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.render.CsvTable;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Times as a table (RFC 4180): a row for each number of poles and entry side. */
final class TimingTable {

  private static final CsvTable TABLE =
      new CsvTable(
          List.of(
              "dog",
              "poles",
              "entrySide",
              "runs",
              "days",
              "seconds",
              "lower",
              "upper",
              "mad",
              "gapsASecond",
              "secondsAWeek",
              "trendLower",
              "trendUpper",
              "spread",
              "slowGaps"));

  private TimingTable() {}

  static String of(String dog, Pace pace) {
    return TABLE.of(
        pace.kinds().stream()
            .map(kind -> (CsvTable.Row) column -> cell(dog, kind, column))
            .toList());
  }

  private static @Nullable Object cell(String dog, PaceOfKind pace, String column) {
    MedianLimits limits = pace.seconds().limits();
    TheilSen trend = pace.trend();
    Rhythm rhythm = pace.rhythm();
    return switch (column) {
      case "dog" -> dog;
      case "poles" -> pace.kind().poles();
      case "entrySide" ->
          pace.kind().entrySide() == null ? null : Writing.wireName(pace.kind().entrySide());
      case "runs" -> pace.seconds().of();
      case "days" -> pace.days().size();
      case "seconds" -> pace.seconds().median();
      case "lower" -> limits == null ? null : limits.lower();
      case "upper" -> limits == null ? null : limits.upper();
      case "mad" -> pace.seconds().mad();
      case "gapsASecond" -> pace.kind().gaps() / pace.seconds().median();
      case "secondsAWeek" -> trend == null ? null : trend.slope();
      case "trendLower" -> trend == null ? null : trend.lower();
      case "trendUpper" -> trend == null ? null : trend.upper();
      case "spread" -> rhythm == null ? null : rhythm.spread().median();
      case "slowGaps" -> rhythm == null ? null : slow(rhythm);
      default -> throw new IllegalArgumentException("no such column: " + column);
    };
  }

  private static String slow(Rhythm rhythm) {
    return rhythm.gaps().stream()
        .filter(Rhythm.Gap::slow)
        .map(gap -> Integer.toString(gap.gap()))
        .collect(Collectors.joining(" "));
  }
}
