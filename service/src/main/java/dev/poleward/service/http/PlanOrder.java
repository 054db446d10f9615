package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * The order in which people read a plan. The journal keeps members in the order of their names, and
 * a plan is to look the same whether it was just made or is read again.
 */
final class PlanOrder {

  private static final List<String> NAMES =
      List.of(
          "plan",
          "dog",
          "issued",
          "programme",
          "programmeVersion",
          "stage",
          "asked",
          "purpose",
          "poles",
          "spacing",
          "leadIn",
          "leadInDistance",
          "backChainStep",
          "jumpTurn",
          "angle",
          "clock",
          "manoeuvre",
          "dogSide",
          "reps",
          "minutes",
          "expectedClean",
          "expectedLower",
          "expectedUpper",
          "id",
          "severity",
          "text",
          "source",
          "rewardStep",
          "rewardName",
          "easier",
          "budget",
          "available",
          "jump",
          "tunnel",
          "sides",
          "pressure",
          "drills",
          "notes",
          "done",
          "came");

  private PlanOrder() {}

  /** The same members, those of all objects within too, in that order; others behind. */
  static ObjectNode of(ObjectNode plan) {
    ObjectNode ordered = JsonNodeFactory.instance.objectNode();
    for (String name : NAMES) {
      if (plan.has(name)) {
        ordered.set(name, inside(plan.get(name)));
      }
    }
    plan.properties().forEach(each -> ordered.putIfAbsent(each.getKey(), inside(each.getValue())));
    return ordered;
  }

  private static JsonNode inside(JsonNode node) {
    if (node instanceof ObjectNode object) {
      return of(object);
    }
    if (node instanceof ArrayNode array) {
      ArrayNode ordered = JsonNodeFactory.instance.arrayNode(array.size());
      array.forEach(each -> ordered.add(inside(each)));
      return ordered;
    }
    return node;
  }
}
