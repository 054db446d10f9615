package dev.poleward.service.http;

import dev.poleward.domain.mastery.AnglePoint;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.http.MasteryShape.ThresholdShape;
import dev.poleward.service.render.CsvTable;
import dev.poleward.service.render.DogCurve;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Angle mastery as a table: a row for each angle of each side, what is true of the whole side in
 * every row of it. A side without reps has one row without an angle.
 */
final class MasteryTable {

  private static final List<String> COLUMNS =
      List.of(
          "dog",
          "entrySide",
          "clock",
          "angle",
          "size",
          "reps",
          "made",
          "weight",
          "estimate",
          "lower",
          "upper",
          "observedShare",
          "observedLower",
          "observedUpper",
          "isotonic",
          "sideReps",
          "sideMade",
          "effectiveReps",
          "shapesDisagree",
          "level",
          "threshold",
          "thresholdAngle",
          "thresholdLower",
          "thresholdUpper",
          "agedTo");

  private static final CsvTable TABLE = new CsvTable(COLUMNS);

  private MasteryTable() {}

  static String of(DogCurve of) {
    return TABLE.of(of.curve().sides().stream().flatMap(side -> rows(of, side)).toList());
  }

  private static Stream<CsvTable.Row> rows(DogCurve of, SideMastery side) {
    return side.points().isEmpty()
        ? Stream.of(column -> cell(of, side, null, column))
        : side.points().stream().map(point -> column -> cell(of, side, point, column));
  }

  private static @Nullable Object cell(
      DogCurve of, SideMastery side, @Nullable AnglePoint point, String column) {
    ThresholdShape threshold = ThresholdShape.of(side.threshold());
    return switch (column) {
      case "dog" -> of.dog();
      case "entrySide" -> Writing.wireName(side.side());
      case "sideReps" -> side.reps();
      case "sideMade" -> side.made();
      case "effectiveReps" -> side.effectiveReps();
      case "shapesDisagree" -> side.shapesDisagree();
      case "level" -> of.curve().question().level();
      case "threshold" -> threshold.status();
      case "thresholdAngle" -> threshold.angle();
      case "thresholdLower" -> threshold.lower();
      case "thresholdUpper" -> threshold.upper();
      case "agedTo" -> of.agedTo();
      default -> point == null ? null : cell(point, column);
    };
  }

  private static @Nullable Object cell(AnglePoint point, String column) {
    Estimate fitted = point.fitted();
    return switch (column) {
      case "clock" -> point.angle().clock().orElse(null);
      case "angle" -> point.angle().degrees();
      case "size" -> point.angle().size();
      case "reps" -> point.reps();
      case "made" -> point.made();
      case "weight" -> point.weight();
      case "estimate" -> fitted == null ? null : fitted.value();
      case "lower" -> fitted == null ? null : fitted.lower();
      case "upper" -> fitted == null ? null : fitted.upper();
      case "observedShare" -> point.observed().value();
      case "observedLower" -> point.observed().lower();
      case "observedUpper" -> point.observed().upper();
      case "isotonic" -> point.isotonic();
      default -> throw new IllegalArgumentException("no such column: " + column);
    };
  }
}
