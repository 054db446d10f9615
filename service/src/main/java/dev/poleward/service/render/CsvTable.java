package dev.poleward.service.render;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A table as RFC 4180 has it, harmless in a spreadsheet. Immutable; for use by many threads. */
public final class CsvTable {

  /** The media type. */
  public static final String CSV = "text/csv";

  /** A spreadsheet takes a text that begins with one of these for a formula. */
  private static final String FORMULA_STARTS = "=+-@\t\r";

  private static final CsvMapper MAPPER = new CsvMapper();

  private final List<String> columns;
  private final CsvSchema schema;

  /** A table with these columns, in this order. */
  public CsvTable(List<String> columns) {
    this.columns = List.copyOf(columns);
    this.schema =
        CsvSchema.builder()
            .addColumns(columns, CsvSchema.ColumnType.STRING)
            .setUseHeader(true)
            .setLineSeparator("\r\n")
            .build();
  }

  /** What a row has in each column: a number, a text, or nothing. */
  public interface Row {
    /** The cell; null where it is empty. */
    @Nullable Object cell(String column);
  }

  /** The table with these rows. */
  public String of(List<? extends Row> rows) {
    List<Map<String, String>> written = new ArrayList<>(rows.size());
    for (Row row : rows) {
      Map<String, String> cells = new LinkedHashMap<>();
      columns.forEach(column -> cells.put(column, written(row.cell(column))));
      written.add(cells);
    }
    try {
      return MAPPER.writer(schema).writeValueAsString(written);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("rows of text can be written", e);
    }
  }

  private static String written(@Nullable Object cell) {
    return switch (cell) {
      case null -> "";
      case Double whole when whole == Math.rint(whole) && Math.abs(whole) < 1e15 ->
          Long.toString(whole.longValue());
      case Number number -> number.toString();
      default -> harmless(cell.toString());
    };
  }

  private static String harmless(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
