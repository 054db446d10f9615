package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.render.CsvTable;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/** Reps as a table (RFC 4180). */
final class RepTable {

  private static final List<String> COLUMNS =
      List.of(
          "event",
          "rep",
          "session",
          "dog",
          "time",
          "entrySide",
          "angle",
          "clock",
          "poles",
          "spacing",
          "leadIn",
          "leadInDistance",
          "jumpHeight",
          "jumpFacing",
          "aids",
          "setup",
          "poleSet",
          "manoeuvre",
          "dogSide",
          "outcome",
          "atPole",
          "backChainStep",
          "jumpTurn",
          "lateralDistance",
          "handlerAt",
          "crossAt",
          "rewards",
          "help",
          "handler",
          "observer",
          "drive",
          "stride",
          "note",
          "amendedBy",
          "duplicates");

  private static final CsvTable TABLE = new CsvTable(COLUMNS);

  private RepTable() {}

  static String of(List<ObjectNode> reps) {
    return TABLE.of(reps.stream().map(rep -> (CsvTable.Row) column -> cell(rep, column)).toList());
  }

  private static @Nullable Object cell(ObjectNode rep, String column) {
    JsonNode value = rep.get(column);
    if (value == null || value.isTextual()) {
      return value == null ? null : value.textValue();
    }
    if (value.isArray()) {
      return isListOfIds(column) ? joined(value) : value.toString();
    }
    return value.isNumber() ? value.numberValue() : value.asText();
  }

  private static boolean isListOfIds(String column) {
    return column.equals("amendedBy") || column.equals("duplicates");
  }

  private static String joined(JsonNode ids) {
    return StreamSupport.stream(ids.spliterator(), false)
        .map(JsonNode::textValue)
        .collect(Collectors.joining(" "));
  }
}
