package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes programmes that keep to their schema keep to the rules as well that no schema can say. */
final class ProgrammeMending {

  private static final Map<String, List<String>> MEMBERS_OF_METHOD =
      Map.of(
          "k-of-n", List.of("k", "n"),
          "run", List.of("length"),
          "sequential", List.of("mastered", "notYet", "wrongMoveOn", "wrongHold"));

  private ProgrammeMending() {}

  static void mend(ObjectNode programme) {
    mendShares(programme, "cleanTarget", "cleanFloor");
    mendRule(programme.get("rule"));
    Set<String> ids = new HashSet<>();
    List<String> before = new ArrayList<>();
    for (JsonNode each : programme.get("stages")) {
      ObjectNode stage = (ObjectNode) each;
      if (!ids.add(stage.get("stage").asText())) {
        stage.put("stage", "mended-" + ids.size());
        ids.add("mended-" + ids.size());
      }
      mendPrerequisites(stage, before);
      if (!stage.path("probe").booleanValue()) {
        before.add(stage.get("stage").asText());
      }
      mendRule(stage.get("rule"));
      mendHandlings(stage);
      if (!stage.get("leadIn").asText().equals("jump")) {
        stage.remove("backChainSteps");
      }
      if (stage.get("leadIn").asText().equals("none")) {
        stage.remove("leadInDistance");
      }
      if (stage.get("entries").get("rungs") instanceof ObjectNode rungs) {
        mendRungs(rungs);
      }
    }
  }

  private static void mendPrerequisites(ObjectNode stage, List<String> before) {
    if (stage.has("prerequisites")) {
      ArrayNode mended = stage.putArray("prerequisites");
      before.forEach(mended::add);
    }
  }

  private static void mendHandlings(ObjectNode stage) {
    ArrayNode handlings = (ArrayNode) stage.get("handlings");
    List<ObjectNode> kept = new ArrayList<>();
    Set<String> manoeuvres = new HashSet<>();
    for (JsonNode each : handlings) {
      ObjectNode handling = (ObjectNode) each;
      handling.remove("untilAngle");
      if (handling.get("manoeuvre").asText().equals("recall")) {
        handling.remove("dogSide");
      }
      if (manoeuvres.add(handling.get("manoeuvre").asText())) {
        kept.add(handling);
      }
    }
    if (stage.get("entries").has("clocks")) {
      // No clock position is larger.
      kept.stream().skip(1).forEach(handling -> handling.put("untilAngle", 165));
    }
    handlings.removeAll();
    handlings.addAll(kept);
  }

  private static void mendRungs(ObjectNode rungs) {
    if (rungs.has("stepChord") && !rungs.has("stepDegrees")) {
      rungs.set("start", rungs.get("end"));
      return;
    }
    rungs.remove("stepChord");
    rungs.put("stepDegrees", Math.max(15, rungs.path("stepDegrees").asDouble()));
    if (rungs.path("start").asDouble() > rungs.get("end").asDouble()) {
      rungs.set("start", rungs.get("end"));
    }
  }

  private static void mendRule(JsonNode node) {
    if (!(node instanceof ObjectNode rule)) {
      return;
    }
    List<String> kept = new ArrayList<>(List.of("method", "stepBackAfter", "wrongMisfit"));
    kept.addAll(MEMBERS_OF_METHOD.getOrDefault(rule.get("method").asText(), List.of()));
    rule.retain(kept);
    if (rule.path("k").asInt(8) > rule.path("n").asInt(10)) {
      rule.put("k", 1);
    }
    mendShares(rule, "mastered", "notYet");
  }

  private static void mendShares(ObjectNode node, String above, String below) {
    if (node.has(above) || node.has(below)) {
      double share = node.path(above).asDouble(0.9);
      node.put(above, share);
      node.put(below, share / 2);
    }
  }
}
