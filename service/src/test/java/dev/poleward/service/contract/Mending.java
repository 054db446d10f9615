package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.ClockPosition;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes bodies that keep to their schema keep to the rules as well that no schema can say. */
final class Mending {

  private static final Map<String, List<String>> MEMBERS_OF_METHOD =
      Map.of(
          "k-of-n", List.of("k", "n"),
          "run", List.of("length"),
          "sequential", List.of("mastered", "notYet", "wrongMoveOn", "wrongHold"));

  private Mending() {}

  static void mend(String type, ObjectNode data) {
    switch (type) {
      case "rep.logged.v1", "rep.amended.v1", "setup.changed.v1" -> {
        mendDirection(data);
        if (data.get("setup") instanceof ObjectNode setup) {
          mendSetup(setup);
        }
      }
      case "homework.set.v1" -> data.get("drills").forEach(Mending::mendDirection);
      case "timing.recorded.v1" -> data.set("exitAt", data.get("entryAt"));
      case "dog.merged.v1" -> data.put("into", data.get("dog").asText().equals("a") ? "b" : "a");
      case "club.settings-changed.v1" -> {
        if (data.has("timeZone")) {
          data.put("timeZone", ZoneId.of("Europe/Lisbon").getId());
        }
      }
      case "programme.published.v1" -> mendProgramme(data);
      default -> {
        // No rules beyond the schema.
      }
    }
  }

  private static void mendSetup(ObjectNode setup) {
    mendDirection(setup);
    if (!setup.get("leadIn").asText().equals("none") && !setup.has("angle")) {
      setup.put("clock", "1:30");
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

  private static void mendProgramme(ObjectNode programme) {
    mendRule(programme.get("rule"));
    Set<String> ids = new HashSet<>();
    for (JsonNode stage : programme.get("stages")) {
      ObjectNode object = (ObjectNode) stage;
      if (!ids.add(object.get("stage").asText())) {
        object.put("stage", "mended-" + ids.size());
        ids.add("mended-" + ids.size());
      }
      mendRule(object.get("rule"));
      if (object.get("entries").get("rungs") instanceof ObjectNode rungs) {
        mendRungs(rungs);
      }
    }
    for (JsonNode stage : programme.get("stages")) {
      if (stage.has("prerequisites")) {
        ((ObjectNode) stage).putArray("prerequisites").add(ids.iterator().next());
      }
    }
  }

  private static void mendRungs(ObjectNode rungs) {
    rungs.remove("stepChord");
    if (!rungs.has("stepDegrees")) {
      rungs.put("stepDegrees", 0.5);
    }
    if (rungs.path("start").asDouble() > rungs.get("end").asDouble()) {
      rungs.set("start", rungs.get("end"));
    }
  }

  private static void mendRule(JsonNode node) {
    if (!(node instanceof ObjectNode rule)) {
      return;
    }
    List<String> kept = new ArrayList<>(List.of("method"));
    kept.addAll(MEMBERS_OF_METHOD.getOrDefault(rule.get("method").asText(), List.of()));
    rule.retain(kept);
    if (rule.has("k") && rule.has("n")) {
      rule.set("k", rule.get("n"));
    }
    if (rule.has("mastered") && rule.has("notYet")) {
      rule.put("notYet", rule.get("mastered").asDouble() / 2);
    }
  }
}
