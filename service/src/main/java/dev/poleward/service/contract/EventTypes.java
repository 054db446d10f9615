package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Which types clients may send, and where the others come from. Immutable. */
final class EventTypes {

  /** The routes that make what only the service writes. */
  private static final Map<String, String> ROUTES =
      Map.of(
          "club.registered.v1", "POST /v1/clubs",
          "access-key.issued.v1", "POST /v1/clubs/{club}/access-keys",
          "access-key.revoked.v1", "DELETE /v1/clubs/{club}/access-keys/{key}",
          "person.forgotten.v1", "DELETE /v1/clubs/{club}/handlers/{handler}/personal-data",
          "plan.issued.v1", "its plans");

  /**
   * How the data of a type is judged.
   *
   * @param data by the schema of the type
   * @param forgotten by what is left of it once the person was forgotten, where that differs
   * @param leftovers the members that may be left then
   */
  record Type(String name, SchemaJudge data, @Nullable SchemaJudge forgotten, JsonNode leftovers) {}

  private final Map<String, Type> types = new HashMap<>();

  EventTypes(Components components) {
    for (JsonNode each : components.schema("EventType").path("enum")) {
      String component = component(each.asText());
      String forgotten = component + "Forgotten";
      types.put(
          each.asText(),
          new Type(
              each.asText(),
              components.judge(component),
              components.has(forgotten) ? components.judge(forgotten) : null,
              components.schema(forgotten).path("properties")));
    }
  }

  /** The component of a type's data: {@code rep.logged.v1} is {@code RepLoggedV1}. */
  static String component(String type) {
    StringBuilder name = new StringBuilder();
    for (String word : type.split("[.-]", -1)) {
      if (!word.isEmpty()) {
        name.append(Character.toUpperCase(word.charAt(0))).append(word, 1, word.length());
      }
    }
    return name.toString();
  }

  /** A type that clients may send; null for any other. */
  @Nullable Type find(@Nullable String name) {
    return name == null ? null : types.get(name);
  }

  /** What to say of a type that clients cannot send. */
  static String refusal(String name) {
    String route = ROUTES.get(name);
    return route == null
        ? "is not a type that is known here"
        : "is written by the service alone, through " + route;
  }
}
