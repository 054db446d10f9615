package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Free-form JSON as plain immutable maps, lists, texts, numbers and truth values, both ways. */
public final class Documents {

  private Documents() {}

  /** An object as an immutable map, in the object's order. */
  public static Map<String, Object> read(ObjectNode node) {
    Map<String, @Nullable Object> map = LinkedHashMap.newLinkedHashMap(node.size());
    node.properties().forEach(member -> map.put(member.getKey(), value(member.getValue())));
    return withoutNullness(Collections.unmodifiableMap(map));
  }

  /** The domain never asks for a member's nullness; documents keep nulls only to give them back. */
  @SuppressWarnings({"unchecked", "NullAway"})
  private static Map<String, Object> withoutNullness(Map<String, @Nullable Object> map) {
    return (Map<String, Object>) (Map<?, ?>) map;
  }

  private static @Nullable Object value(JsonNode node) {
    return switch (node.getNodeType()) {
      case OBJECT -> read((ObjectNode) node);
      case ARRAY -> list((ArrayNode) node);
      case STRING -> node.textValue();
      case BOOLEAN -> node.booleanValue();
      case NUMBER -> number(node);
      case NULL, MISSING -> null;
      case BINARY, POJO ->
          throw new IllegalArgumentException("not JSON as read from text: " + node.getNodeType());
    };
  }

  /** RFC 8785 writes numbers up to 1e21 without an exponent: more than fit a long. */
  private static Object number(JsonNode node) {
    return node.isIntegralNumber() && node.canConvertToLong()
        ? (Object) node.longValue()
        : node.doubleValue();
  }

  private static List<@Nullable Object> list(ArrayNode array) {
    List<@Nullable Object> list = new ArrayList<>(array.size());
    array.forEach(element -> list.add(value(element)));
    return Collections.unmodifiableList(list);
  }

  /** A map as an object, in the map's order. */
  public static ObjectNode write(Map<?, ?> map) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    map.forEach((name, value) -> node.set(String.valueOf(name), node(value)));
    return node;
  }

  private static JsonNode node(@Nullable Object value) {
    JsonNodeFactory json = JsonNodeFactory.instance;
    return switch (value) {
      case null -> json.nullNode();
      case Map<?, ?> map -> write(map);
      case List<?> list -> {
        ArrayNode array = json.arrayNode(list.size());
        list.forEach(element -> array.add(node(element)));
        yield array;
      }
      case String text -> json.textNode(text);
      case Boolean truth -> json.booleanNode(truth);
      case Long whole -> json.numberNode(whole);
      case Integer whole -> json.numberNode(whole);
      case Double number -> json.numberNode(number);
      default -> throw new IllegalArgumentException("not a document's value: " + value.getClass());
    };
  }
}
