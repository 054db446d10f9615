package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** Makes bodies that keep to a schema, from its smallest to its largest. For one thread. */
final class BodyMaker {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final int TRIES = 50;
  private static final int USUAL_MORE = 3;
  private static final double OFTEN = 0.5;
  private static final double SELDOM = 0.03;

  private final SplittableRandom random;
  private final WordMaker words;

  BodyMaker(SplittableRandom random) {
    this.random = random;
    this.words = new WordMaker(random);
  }

  /** Something that keeps to the schema, which is bare. */
  JsonNode make(JsonNode schema) {
    if (schema.has("const")) {
      return schema.get("const");
    }
    if (schema.has("enum")) {
      return schema.get("enum").get(random.nextInt(schema.get("enum").size()));
    }
    return switch (kind(schema.path("type"))) {
      case "object" -> object(schema);
      case "array" -> array(schema);
      case "string" -> JSON.textNode(words.make(schema));
      case "integer" -> whole(schema);
      case "number" -> random.nextDouble() < OFTEN ? whole(schema) : fraction(schema);
      case "boolean" -> JSON.booleanNode(random.nextBoolean());
      case "null" -> JSON.nullNode();
      default -> throw new IllegalArgumentException("no such kind is made: " + schema);
    };
  }

  private String kind(JsonNode type) {
    return type.isArray() ? type.get(random.nextInt(type.size())).asText() : type.asText();
  }

  private ObjectNode object(JsonNode schema) {
    ObjectNode made = JSON.objectNode();
    JsonNode properties = schema.path("properties");
    schema.path("required").forEach(each -> put(made, properties, each.asText()));
    List<String> others = new ArrayList<>();
    properties.fieldNames().forEachRemaining(others::add);
    int most = schema.path("maxProperties").asInt(Integer.MAX_VALUE);
    double share = random.nextDouble();
    while (!others.isEmpty() && made.size() < most) {
      String name = others.remove(random.nextInt(others.size()));
      boolean needed = made.size() < schema.path("minProperties").asInt();
      if (!made.has(name) && (needed || random.nextDouble() < share)) {
        put(made, properties, name);
      }
    }
    if (schema.path("additionalProperties").isObject()) {
      for (int i = random.nextInt(USUAL_MORE); i > 0 && made.size() < most; i--) {
        made.set(words.name(), make(schema.get("additionalProperties")));
      }
    }
    return made;
  }

  private void put(ObjectNode made, JsonNode properties, String name) {
    made.set(name, make(properties.path(name)));
  }

  private ArrayNode array(JsonNode schema) {
    int least = schema.path("minItems").asInt();
    int most = schema.path("maxItems").asInt();
    int length =
        random.nextDouble() < SELDOM
            ? most
            : Math.min(most, least + random.nextInt(USUAL_MORE + 1));
    ArrayNode made = JSON.arrayNode();
    Set<JsonNode> known = new HashSet<>();
    boolean unique = schema.path("uniqueItems").asBoolean();
    for (int tries = 0; made.size() < length && tries < TRIES + length; tries++) {
      JsonNode item = make(schema.path("items"));
      if (!unique || known.add(item)) {
        made.add(item);
      }
    }
    return made;
  }

  /** A whole number, seldom written as 4.0. */
  private JsonNode whole(JsonNode schema) {
    long least = (long) Math.ceil(least(schema));
    long most = (long) Math.floor(most(schema));
    if (schema.has("exclusiveMinimum") && least == least(schema)) {
      least++;
    }
    if (schema.has("exclusiveMaximum") && most == most(schema)) {
      most--;
    }
    if (least > most) {
      return fraction(schema);
    }
    long value =
        switch (random.nextInt(10)) {
          case 0 -> least;
          case 1 -> most;
          default -> random.nextLong(least, most + 1);
        };
    return random.nextDouble() < SELDOM ? JSON.numberNode((double) value) : JSON.numberNode(value);
  }

  private JsonNode fraction(JsonNode schema) {
    double least = least(schema);
    double most = most(schema);
    double value = least + (most - least) * random.nextDouble();
    if (random.nextBoolean()) {
      value = Math.rint(value * 100) / 100;
    }
    boolean inside =
        (schema.has("exclusiveMinimum") ? value > least : value >= least)
            && (schema.has("exclusiveMaximum") ? value < most : value <= most);
    return JSON.numberNode(inside ? value : (least + most) / 2);
  }

  private static double least(JsonNode schema) {
    return schema.path(schema.has("minimum") ? "minimum" : "exclusiveMinimum").asDouble();
  }

  private static double most(JsonNode schema) {
    return schema.path(schema.has("maximum") ? "maximum" : "exclusiveMaximum").asDouble();
  }
}
