package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;

/** What the patterns and formats of the contract ask for, in plain words. */
final class ExpectedForm {

  private static final String TIME =
      "must be a time that exists, of the years 1900 to 2199, RFC 3339 with an offset,"
          + " as in 2026-05-04T18:02:11+01:00";
  private static final String DATE =
      "must be a day that exists, of the years 1900 to 2199, as in 2026-05-04";
  private static final String NAME_OF_ATTRIBUTE =
      "is not known here: attributes have names of 1 to 20 lower-case letters and digits";

  private static final Map<String, String> PATTERNS =
      Map.of(
          "^(?!\\.{1,2}$)[A-Za-z0-9._~-]{1,64}$",
          "must be 1 to 64 of the characters A-Z a-z 0-9 . _ ~ -, and not . or ..",
          "^[A-Za-z0-9.~-]{1,64}$",
          "must be 1 to 64 of the characters A-Z a-z 0-9 . ~ -",
          "^(([1-57-9]|1[0-2]):(00|30)|6:30)$",
          "must be a clock position on a whole or half hour, as in 1:30; 6:00 has no side",
          "^[^@\\s]+@[^@\\s]+$",
          "must be a mail address",
          "^[A-Za-z][A-Za-z0-9_+-]*(/[A-Za-z0-9_+-]+)*$",
          "must be a time zone by its IANA name, as in Europe/Lisbon",
          "^(19|20|21)[0-9]{2}-[0-9]{2}-[0-9]{2}$",
          DATE,
          "^[A-Za-z][A-Za-z0-9]{0,63}$",
          "is not a name for a setting: a letter, then at most 63 letters and digits",
          "^[a-z0-9]{1,20}$",
          NAME_OF_ATTRIBUTE,
          "^(19|20|21)[0-9]{2}-[0-9]{2}-[0-9]{2}[Tt][0-9]{2}:[0-9]{2}:[0-5][0-9](\\.[0-9]{1,9})?"
              + "([Zz]|\\+(0[0-9]|1[0-7]):[0-5][0-9]|-(0[1-9]|1[0-7]):[0-5][0-9]"
              + "|-00:(0[1-9]|[1-5][0-9])|[+-]18:00)$",
          TIME);

  private ExpectedForm() {}

  static String ofPattern(String pattern) {
    return PATTERNS.getOrDefault(pattern, "must look like " + pattern);
  }

  static String ofFormat(String format) {
    return switch (format) {
      case "date-time" -> TIME;
      case "date" -> DATE;
      case "uri" -> "must be a URI";
      case "uri-reference" -> "must be a URI or a path";
      default -> "must be of the form " + format;
    };
  }

  /** What a name must look like that a schema for names refuses. */
  static String ofName(JsonNode names) {
    return ofPattern(names.path("pattern").asText());
  }
}
