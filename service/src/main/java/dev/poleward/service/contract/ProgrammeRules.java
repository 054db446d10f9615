package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the contract asks of a programme's document that no schema can say. */
final class ProgrammeRules {

  private static final int RUNGS_PER_SIDE_MAX = 360;

  /** Metres; what is usual, where neither stage nor programme says how far apart the poles are. */
  private static final double SPACING_USUAL = 0.6;

  private static final Map<String, Set<String>> MEMBERS_OF_METHOD =
      Map.of(
          "k-of-n", Set.of("k", "n"),
          "run", Set.of("length"),
          "sequential", Set.of("mastered", "notYet", "wrongMoveOn", "wrongHold"));
  private static final List<String> MEMBERS_OF_METHODS =
      List.of("k", "n", "length", "mastered", "notYet", "wrongMoveOn", "wrongHold");

  private ProgrammeRules() {}

  static void judge(ObjectNode programme, String pointer, Findings findings) {
    judgeRule(programme.path("rule"), pointer + "/rule", findings);
    JsonNode stages = programme.path("stages");
    Set<String> ids = judgeIds(stages, pointer, findings);
    for (int i = 0; i < stages.size(); i++) {
      JsonNode stage = stages.path(i);
      String at = pointer + "/stages/" + i;
      judgePrerequisites(stage.path("prerequisites"), ids, at + "/prerequisites", findings);
      judgeRule(stage.path("rule"), at + "/rule", findings);
      double spacing =
          stage.path("spacing").asDouble(programme.path("spacing").asDouble(SPACING_USUAL));
      double length = (stage.path("poles").asInt() - 1) * spacing;
      judgeRungs(stage.path("entries").path("rungs"), length, at + "/entries/rungs", findings);
    }
  }

  private static Set<String> judgeIds(JsonNode stages, String pointer, Findings findings) {
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < stages.size(); i++) {
      String id = stages.path(i).path("stage").textValue();
      if (id != null && !ids.add(id)) {
        findings.broken(
            pointer + "/stages/" + i + "/stage", "is the id of an earlier stage already");
      }
    }
    return ids;
  }

  private static void judgePrerequisites(
      JsonNode prerequisites, Set<String> ids, String pointer, Findings findings) {
    for (int i = 0; i < prerequisites.size(); i++) {
      String id = prerequisites.path(i).textValue();
      if (id != null && !ids.contains(id)) {
        findings.broken(pointer + "/" + i, "must be a stage of this programme");
      }
    }
  }

  private static void judgeRule(JsonNode rule, String pointer, Findings findings) {
    String method = rule.path("method").textValue();
    Set<String> members = method == null ? null : MEMBERS_OF_METHOD.get(method);
    if (members == null) {
      return;
    }
    for (String name : MEMBERS_OF_METHODS) {
      if (rule.has(name) && !members.contains(name)) {
        findings.broken(pointer + "/" + name, "does not belong to the method " + method);
      }
    }
    if (isAbove(rule, "k", "n")) {
      findings.broken(pointer + "/k", "must not be above n");
    }
    JsonNode mastered = rule.path("mastered");
    JsonNode notYet = rule.path("notYet");
    if (mastered.isNumber() && notYet.isNumber() && !isAbove(rule, "mastered", "notYet")) {
      findings.broken(pointer + "/notYet", "must be below mastered");
    }
  }

  private static boolean isAbove(JsonNode node, String one, String other) {
    return node.path(one).isNumber()
        && node.path(other).isNumber()
        && node.path(one).doubleValue() > node.path(other).doubleValue();
  }

  /**
   * Judges the rungs of a stage.
   *
   * @param length metres from the first pole to the last
   */
  private static void judgeRungs(JsonNode rungs, double length, String pointer, Findings findings) {
    if (!rungs.isObject()) {
      return;
    }
    boolean both = rungs.has("stepDegrees") && rungs.has("stepChord");
    if (both) {
      findings.broken(pointer + "/stepChord", "must not be given beside stepDegrees");
    } else if (!rungs.has("stepDegrees") && !rungs.has("stepChord")) {
      findings.broken(pointer + "/stepDegrees", "is required, or stepChord in its place");
    }
    double start = rungs.path("start").asDouble(0);
    double end = rungs.path("end").asDouble(start);
    if (end < start) {
      findings.broken(pointer + "/end", "must not be below start");
    }
    double chord = rungs.path("stepChord").asDouble(0);
    if (!both && chord > 0 && length > 0 && count(start, end, chord, length) > RUNGS_PER_SIDE_MAX) {
      findings.broken(
          pointer + "/stepChord",
          "is so short that a side has more than %d rungs".formatted(RUNGS_PER_SIDE_MAX));
    }
  }

  private static double count(double start, double end, double chord, double length) {
    double degreesEach = 2 * Math.toDegrees(Math.asin(Math.min(1, chord / (2 * length))));
    return Math.floor((end - start) / degreesEach) + 1;
  }
}
