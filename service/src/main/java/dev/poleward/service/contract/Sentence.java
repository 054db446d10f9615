package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import dev.poleward.service.contract.Findings.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * What a broken keyword of a schema means in plain words.
 *
 * @param text goes on from the name of the member
 * @param ofMember whether it speaks of the member that the error names, and not of the object
 */
record Sentence(String text, Weight weight, boolean ofMember) {

  private static final int NAMES_MAX = 6;

  /**
   * Puts an error into words.
   *
   * @param rule the schema whose keyword is broken
   */
  static Sentence of(Error error, JsonNode rule) {
    return switch (error.getKeyword()) {
      case "required" -> ofMember("is required");
      case "additionalProperties" -> ofMember("is not known here");
      case "propertyNames" -> ofMember(ExpectedForm.ofName(rule.path("propertyNames")));
      case "type" -> new Sentence(kind(rule), Weight.KIND, false);
      case "enum", "const" -> new Sentence("must be " + choice(rule), Weight.CHOICE, false);
      case "minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum" ->
          new Sentence(range(rule), Weight.RANGE, false);
      case "minLength", "maxLength" -> new Sentence(length(rule), Weight.RANGE, false);
      case "minItems", "maxItems" -> new Sentence(amount(rule), Weight.RANGE, false);
      case "minProperties", "maxProperties" -> new Sentence(members(rule), Weight.RANGE, false);
      case "uniqueItems" -> form("must not say the same twice");
      case "pattern" -> form(ExpectedForm.ofPattern(rule.path("pattern").asText()));
      case "format" -> form(ExpectedForm.ofFormat(rule.path("format").asText()));
      default -> form("does not keep to the contract: " + error.getKeyword());
    };
  }

  private static Sentence ofMember(String text) {
    return new Sentence(text, Weight.KIND, true);
  }

  private static Sentence form(String text) {
    return new Sentence(text, Weight.FORM, false);
  }

  private static String kind(JsonNode rule) {
    JsonNode type = rule.path("type");
    List<JsonNode> types = type.isArray() ? items(type) : List.of(type);
    String kinds = listed(types.stream().map(each -> nameOfKind(each.asText())).toList(), " or ");
    return "must be " + kinds + (rule.has("enum") ? ": " + choice(rule) : "");
  }

  private static String nameOfKind(String type) {
    return switch (type) {
      case "string" -> "text";
      case "integer" -> "a whole number";
      case "number" -> "a number";
      case "boolean" -> "true or false";
      case "array" -> "a list";
      case "object" -> "an object";
      default -> type;
    };
  }

  private static String choice(JsonNode rule) {
    if (rule.has("const")) {
      return rule.path("const").asText();
    }
    List<String> values = items(rule.path("enum")).stream().map(JsonNode::asText).toList();
    return values.stream().filter(each -> !each.equals("null")).count() == 1
        ? listed(values, " or ")
        : "one of " + String.join(", ", values);
  }

  private static String range(JsonNode rule) {
    String least = bound(rule, "minimum", "exclusiveMinimum");
    String most = bound(rule, "maximum", "exclusiveMaximum");
    boolean above = rule.has("exclusiveMinimum");
    boolean below = rule.has("exclusiveMaximum");
    if (above && below && least.equals("-180") && most.equals("180")) {
      return "must lie between -180 and 180, both excluded:"
          + " straight back through the poles has no side";
    }
    if (!least.isEmpty() && !most.isEmpty() && above == below) {
      return "must lie between %s and %s%s".formatted(least, most, above ? ", both excluded" : "");
    }
    List<String> bounds = new ArrayList<>();
    if (!least.isEmpty()) {
      bounds.add((above ? "above " : "at least ") + least);
    }
    if (!most.isEmpty()) {
      bounds.add((below ? "below " : "at most ") + most);
    }
    return "must be " + listed(bounds, " and ");
  }

  private static String bound(JsonNode rule, String included, String excluded) {
    return rule.path(rule.has(excluded) ? excluded : included).asText();
  }

  private static String length(JsonNode rule) {
    return "must be " + span(rule, "minLength", "maxLength") + " characters long";
  }

  private static String amount(JsonNode rule) {
    return "must hold " + span(rule, "minItems", "maxItems") + " items";
  }

  private static String span(JsonNode rule, String least, String most) {
    if (!rule.has(most)) {
      return "at least " + rule.path(least).asText();
    }
    return rule.has(least)
        ? rule.path(least).asText() + " to " + rule.path(most).asText()
        : "at most " + rule.path(most).asText();
  }

  private static String members(JsonNode rule) {
    List<String> required = items(rule.path("required")).stream().map(JsonNode::asText).toList();
    List<String> others = new ArrayList<>();
    rule.path("properties").fieldNames().forEachRemaining(others::add);
    others.removeAll(required);
    int least = rule.path("minProperties").asInt();
    if (least == 1 && rule.path("maxProperties").asInt() == 1) {
      return "must say either " + listed(others, " or ") + ", and not both";
    }
    if (least == 0) {
      return "must have " + span(rule, "minProperties", "maxProperties") + " members";
    }
    String more = required.isEmpty() ? "something" : "more than " + listed(required, " and ");
    return "must say "
        + more
        + (others.size() > NAMES_MAX ? "" : ": at least one of " + String.join(", ", others));
  }

  private static List<JsonNode> items(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }

  private static String listed(List<String> words, String last) {
    return words.size() < 2
        ? String.join("", words)
        : words.subList(0, words.size() - 1).stream().collect(Collectors.joining(", "))
            + last
            + words.getLast();
  }
}
