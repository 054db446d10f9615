package dev.poleward.service.http;

import dev.poleward.domain.judgement.DrillCount;
import dev.poleward.domain.judgement.DrillRun;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.render.CsvTable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Drills that were run as a table (RFC 4180): a row for each. */
final class ProgressTable {

  private static final List<String> COLUMNS =
      List.of(
          "dog",
          "poles",
          "leadIn",
          "backChainStep",
          "jumpTurn",
          "entrySide",
          "angle",
          "clock",
          "manoeuvre",
          "dogSide",
          "reps",
          "clean",
          "made",
          "cleanShare",
          "cleanLower",
          "cleanUpper",
          "recentClean",
          "recentOf",
          "helped",
          "first",
          "last");

  private static final CsvTable TABLE = new CsvTable(COLUMNS);

  private ProgressTable() {}

  static String of(String dog, List<DrillCount> counts) {
    return TABLE.of(
        counts.stream().map(count -> (CsvTable.Row) column -> cell(dog, count, column)).toList());
  }

  private static @Nullable Object cell(String dog, DrillCount count, String column) {
    Estimate share = count.cleanShare();
    return switch (column) {
      case "dog" -> dog;
      case "reps" -> count.reps();
      case "clean" -> count.clean();
      case "made" -> count.made();
      case "cleanShare" -> share == null ? null : share.value();
      case "cleanLower" -> share == null ? null : share.lower();
      case "cleanUpper" -> share == null ? null : share.upper();
      case "recentClean" -> count.recent().clean();
      case "recentOf" -> count.recent().of();
      case "helped" -> count.helped();
      case "first" -> count.first();
      case "last" -> count.last();
      default -> cell(count.drill(), column);
    };
  }

  private static @Nullable Object cell(DrillRun drill, String column) {
    return switch (column) {
      case "poles" -> drill.poles();
      case "leadIn" -> Writing.wireName(drill.leadIn());
      case "backChainStep" -> wireName(drill.step());
      case "jumpTurn" -> wireName(drill.turn());
      case "entrySide" -> Writing.wireName(drill.angle().side());
      case "angle" -> drill.angle().degrees();
      case "clock" -> drill.angle().clock().orElse(null);
      case "manoeuvre" -> Writing.wireName(drill.manoeuvre());
      case "dogSide" -> wireName(drill.dogSide());
      default -> throw new IllegalArgumentException("no such column: " + column);
    };
  }

  private static @Nullable String wireName(@Nullable Enum<?> value) {
    return value == null ? null : Writing.wireName(value);
  }
}
