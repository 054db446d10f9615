package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.ClockPosition;
import java.time.ZoneId;
import java.util.List;

/** Makes bodies that keep to their schema keep to the rules as well that no schema can say. */
final class Mending {

  private Mending() {}

  static void mend(String type, ObjectNode data) {
    switch (type) {
      case "rep.logged.v1", "rep.amended.v1", "setup.changed.v1" -> {
        mendDirection(data);
        mendPole(data, data.path("setup").path("poles"));
        if (data.get("setup") instanceof ObjectNode setup) {
          mendSetup(setup);
        }
      }
      case "trial.run.v1" -> mendPole(data, data.path("poles"));
      case "homework.set.v1" -> data.get("drills").forEach(Mending::mendDirection);
      case "timing.recorded.v1" -> data.set("exitAt", data.get("entryAt"));
      case "dog.merged.v1" -> data.put("into", data.get("dog").asText().equals("a") ? "b" : "a");
      case "club.settings-changed.v1" -> {
        if (data.has("timeZone")) {
          data.put("timeZone", ZoneId.of("Europe/Lisbon").getId());
        }
        mendCareLimits(data.path("careLimits"));
      }
      case "dog.cleared.v1" -> mendCareLimits(data.path("limits"));
      case "programme.published.v1" -> ProgrammeMending.mend(data);
      default -> {
        // No rules beyond the schema.
      }
    }
  }

  private static void mendCareLimits(JsonNode limits) {
    if (limits instanceof ObjectNode object) {
      object.remove(List.of("heatCaution", "heatStop"));
    }
  }

  private static void mendSetup(ObjectNode setup) {
    mendDirection(setup);
    if (!setup.get("leadIn").asText().equals("none") && !setup.has("angle")) {
      setup.put("clock", "1:30");
    }
  }

  private static void mendPole(ObjectNode data, JsonNode poles) {
    if (data.path("atPole").isNumber() && poles.isNumber()) {
      data.put("atPole", Math.min(data.get("atPole").asInt(), poles.asInt()));
    }
  }

  private static void mendDirection(JsonNode node) {
    if (node instanceof ObjectNode object
        && object.path("angle").isNumber()
        && object.path("clock").isTextual()) {
      ClockPosition clock = ClockPosition.read(object.get("clock").asText()).orElseThrow();
      object.put("angle", clock.angle().degrees());
    }
  }
}
