package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Set;

/**
 * Schemas without what is for people, and with what they refer to in its place. They accept and
 * refuse the same, at half the cost: the validator pays for every keyword and for every reference.
 */
final class BareSchema {

  private static final int DEPTH_MAX = 32;
  private static final String REFERENCE = "$ref";

  private static final Set<String> FOR_PEOPLE =
      Set.of(
          "default",
          "deprecated",
          "description",
          "discriminator",
          "example",
          "examples",
          "externalDocs",
          "readOnly",
          "title",
          "writeOnly");

  /** Keywords whose value is schemas by name. */
  private static final Set<String> BY_NAME = Set.of("properties", "patternProperties");

  /** Keywords whose value is a list of schemas. */
  private static final Set<String> LISTS = Set.of("allOf", "anyOf", "oneOf", "prefixItems");

  /** Keywords whose value is a schema. */
  private static final Set<String> SCHEMAS =
      Set.of(
          "additionalProperties",
          "contains",
          "else",
          "if",
          "items",
          "not",
          "propertyNames",
          "then");

  private BareSchema() {}

  /**
   * The bare form of a schema.
   *
   * @param document in which its references are found
   * @throws IllegalArgumentException when a reference leads nowhere or in a circle
   */
  static JsonNode of(JsonNode schema, JsonNode document) {
    return bare(schema, document, 0);
  }

  private static JsonNode bare(JsonNode schema, JsonNode document, int depth) {
    if (depth > DEPTH_MAX) {
      throw new IllegalArgumentException("schemas refer to each other in a circle, or too deep");
    }
    if (!schema.isObject()) {
      return schema;
    }
    ObjectNode bare = JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> keyword : schema.properties()) {
      String name = keyword.getKey();
      JsonNode value = keyword.getValue();
      if (name.equals(REFERENCE) || isForPeople(name) || allowsAll(name, value)) {
        continue;
      }
      if (BY_NAME.contains(name)) {
        ObjectNode schemas = bare.putObject(name);
        value
            .properties()
            .forEach(
                each -> schemas.set(each.getKey(), bare(each.getValue(), document, depth + 1)));
      } else if (LISTS.contains(name)) {
        ArrayNode schemas = bare.putArray(name);
        value.forEach(each -> schemas.add(bare(each, document, depth + 1)));
      } else if (SCHEMAS.contains(name)) {
        bare.set(name, bare(value, document, depth + 1));
      } else {
        bare.set(name, value);
      }
    }
    return schema.has(REFERENCE) ? joined(bare, target(schema, document), document, depth) : bare;
  }

  private static JsonNode joined(
      ObjectNode siblings, JsonNode target, JsonNode document, int depth) {
    JsonNode bare = bare(target, document, depth + 1);
    if (siblings.isEmpty()) {
      return bare;
    }
    siblings.withArray("/allOf").add(bare);
    return siblings;
  }

  private static JsonNode target(JsonNode schema, JsonNode document) {
    String reference = schema.path(REFERENCE).asText();
    JsonNode target =
        reference.startsWith("#/")
            ? document.at(reference.substring(1))
            : JsonNodeFactory.instance.missingNode();
    if (target.isMissingNode()) {
      throw new IllegalArgumentException("a schema refers to " + reference);
    }
    return target;
  }

  private static boolean isForPeople(String keyword) {
    return FOR_PEOPLE.contains(keyword) || keyword.startsWith("x-");
  }

  private static boolean allowsAll(String keyword, JsonNode value) {
    return keyword.equals("additionalProperties") && value.isBoolean() && value.booleanValue();
  }
}
