package dev.poleward.service.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/** Reps as a table (RFC 4180). */
final class RepTable {

  static final String CSV = "text/csv";

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

  /** A spreadsheet takes a text that begins with one of these for a formula. */
  private static final String FORMULA_STARTS = "=+-@\t\r";

  private static final CsvMapper MAPPER = new CsvMapper();
  private static final CsvSchema SCHEMA =
      CsvSchema.builder()
          .addColumns(COLUMNS, CsvSchema.ColumnType.STRING)
          .setUseHeader(true)
          .setLineSeparator("\r\n")
          .build();

  private RepTable() {}

  static String of(List<ObjectNode> reps) {
    List<Map<String, String>> rows = new ArrayList<>(reps.size());
    for (ObjectNode rep : reps) {
      Map<String, String> row = new LinkedHashMap<>();
      COLUMNS.forEach(column -> row.put(column, cell(column, rep.get(column))));
      rows.add(row);
    }
    try {
      return MAPPER.writer(SCHEMA).writeValueAsString(rows);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("rows of text can be written", e);
    }
  }

  private static String cell(String column, @Nullable JsonNode value) {
    if (value == null) {
      return "";
    }
    if (value.isArray()) {
      return isListOfIds(column) ? joined(value) : value.toString();
    }
    return value.isTextual() ? harmless(value.textValue()) : value.asText();
  }

  private static boolean isListOfIds(String column) {
    return column.equals("amendedBy") || column.equals("duplicates");
  }

  private static String joined(JsonNode ids) {
    return harmless(
        StreamSupport.stream(ids.spliterator(), false)
            .map(JsonNode::textValue)
            .collect(Collectors.joining(" ")));
  }

  private static String harmless(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
