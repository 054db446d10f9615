package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.care.Conditions;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.planning.Available;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.service.codec.SetupCodec;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a trainer asks a plan for, as the contract's {@code AskForPlan} says it.
 *
 * @param reps budget
 * @param sides entry sides that are wanted
 */
record PlanAsked(
    int reps, Available available, Set<EntrySide> sides, boolean pressure, Conditions conditions) {

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
            at.path("poles").asInt(POLES_MAX),
            stands(body.path("setup"))),
        sides(body.path("sides")),
        body.path("pressure").asBoolean(false),
        conditions(body.path("conditions")));
  }

  /** What stands, as a drill that a dog could run over it; null without one. */
  private static @Nullable Drill stands(JsonNode setup) {
    if (!(setup instanceof ObjectNode said)) {
      return null;
    }
    Setup stands = SetupCodec.read(said);
    return new Drill(
        stands.poles(),
        RunUp.over(stands.leadIn()),
        new Rung(stands.approach() == null ? EntryAngle.STRAIGHT : stands.approach().entry()),
        new Handling(Manoeuvre.ALONGSIDE, null, null));
  }

  private static Conditions conditions(JsonNode said) {
    return new Conditions(
        said.has("temperature") ? said.get("temperature").doubleValue() : null,
        said.has("humidity") ? said.get("humidity").doubleValue() : null,
        said.has("sky")
            ? said.get("sky").textValue().equals("sun") ? Conditions.Sky.SUN : Conditions.Sky.SHADE
            : null,
        said.has("footing")
            ? said.get("footing").textValue().equals("wet")
                ? Conditions.Footing.WET
                : Conditions.Footing.DRY
            : null);
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
