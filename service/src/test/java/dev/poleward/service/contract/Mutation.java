package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** Spoils a body in one place, or leaves it good by chance. For one thread. */
final class Mutation {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private static final List<JsonNode> OTHERS =
      List.of(
          JSON.nullNode(),
          JSON.booleanNode(true),
          JSON.numberNode(0),
          JSON.numberNode(-1),
          JSON.numberNode(2.5),
          JSON.numberNode(180),
          JSON.numberNode(4.0),
          JSON.numberNode(1e300),
          JSON.textNode(""),
          JSON.textNode("6:00"),
          JSON.textNode("juniper\n"),
          JSON.textNode("2026-02-30"),
          JSON.textNode("2026-02-30T24:61:60Z"),
          JSON.textNode("x".repeat(3_000)),
          JSON.arrayNode(),
          JSON.arrayNode().add("a").add("a"),
          JSON.objectNode(),
          JSON.objectNode().put("made", 1));

  private final SplittableRandom random;

  Mutation(SplittableRandom random) {
    this.random = random;
  }

  /** Changes the body. */
  void spoil(ObjectNode body) {
    List<JsonNode> containers = new ArrayList<>();
    gather(body, containers);
    JsonNode container = containers.get(random.nextInt(containers.size()));
    if (container instanceof ObjectNode object) {
      spoilMember(object);
    } else if (container instanceof ArrayNode array) {
      spoilItem(array);
    }
  }

  private static void gather(JsonNode node, List<JsonNode> containers) {
    if (node.isContainerNode()) {
      containers.add(node);
      node.forEach(each -> gather(each, containers));
    }
  }

  private void spoilMember(ObjectNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    int kind = names.isEmpty() ? 0 : random.nextInt(6);
    String name = names.isEmpty() ? "" : names.get(random.nextInt(names.size()));
    switch (kind) {
      case 0 ->
          object.set(pick(List.of("extra", "a/b~c", "", "#made", "data", "e".repeat(40))), other());
      case 1 -> object.remove(name);
      case 2 -> object.putNull(name);
      case 3 -> object.set(name, other());
      default -> object.set(name, changed(object.get(name)));
    }
  }

  private void spoilItem(ArrayNode array) {
    int kind = array.isEmpty() ? 0 : random.nextInt(5);
    int at = array.isEmpty() ? 0 : random.nextInt(array.size());
    switch (kind) {
      case 0 -> array.add(other());
      case 1 -> array.remove(at);
      case 2 -> array.set(at, other());
      case 3 -> {
        JsonNode item = array.get(at);
        for (int i = random.nextInt(120); i > 0; i--) {
          array.add(item.deepCopy());
        }
      }
      default -> array.set(at, changed(array.get(at)));
    }
  }

  /** Something near to the value: beyond its range or its choice, or just still within. */
  private JsonNode changed(JsonNode value) {
    if (value.isTextual()) {
      String text = value.textValue();
      return JSON.textNode(
          pick(List.of(text + "x", text + "\n", text.toUpperCase(Locale.ROOT), text + "é", " ")));
    }
    if (value.isNumber()) {
      double number = value.doubleValue();
      return JSON.numberNode(
          pick(List.of(number * 1e6, -number, number + 0.5, number + 1, number * 2)));
    }
    return other();
  }

  private JsonNode other() {
    return pick(OTHERS).deepCopy();
  }

  private <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }
}
