package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.planning.Available;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a trainer asks a plan for, as the contract's {@code AskForPlan} says it.
 *
 * @param reps budget
 * @param sides entry sides that are wanted
 */
record PlanAsked(int reps, Available available, Set<EntrySide> sides, boolean pressure) {

  private static final int POLES_MAX = 24;

  /** A rep with what lies around it, where minutes are given: 40 seconds [C]. */
  private static final double MINUTES_PER_REP = 40.0 / 60;

  static final int REPS_USUAL = 10;
  private static final int REPS_MAX = 60;

  static PlanAsked of(ObjectNode body) {
    JsonNode at = body.path("available");
    return new PlanAsked(
        reps(body.path("budget")),
        new Available(
            at.path("jump").asBoolean(true),
            at.path("tunnel").asBoolean(true),
            at.path("poles").asInt(POLES_MAX)),
        sides(body.path("sides")),
        body.path("pressure").asBoolean(false));
  }

  private static int reps(JsonNode budget) {
    if (budget.has("reps")) {
      return budget.get("reps").intValue();
    }
    if (budget.has("minutes")) {
      int reps = (int) (budget.get("minutes").doubleValue() / MINUTES_PER_REP);
      return Math.max(1, Math.min(REPS_MAX, reps));
    }
    return REPS_USUAL;
  }

  private static Set<EntrySide> sides(JsonNode said) {
    if (!said.isArray()) {
      return EnumSet.of(EntrySide.POLE, EntrySide.GAP);
    }
    Set<EntrySide> sides = EnumSet.noneOf(EntrySide.class);
    said.forEach(
        side -> sides.add(side.textValue().equals("pole") ? EntrySide.POLE : EntrySide.GAP));
    return sides;
  }
}
