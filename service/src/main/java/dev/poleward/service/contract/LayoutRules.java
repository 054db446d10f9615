package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.layout.TurningTable;
import java.util.Locale;

/** What the contract asks of a wish for a layout that no schema can say. */
final class LayoutRules {

  private LayoutRules() {}

  static void judge(ObjectNode body, Findings findings) {
    SetupRules.judgeSetup(body.path("setup"), "/setup", findings);
    SetupRules.judgeSetup(body.path("standing"), "/standing", findings);
    judgeTurning(body, findings);
    JsonNode pegs = body.path("pegs");
    if (isSame(pegs, "x") && isSame(pegs, "y")) {
      findings.broken("/pegs/b", "must stand elsewhere than peg a");
    }
  }

  /** 1 and 1.0 are one place. */
  private static boolean isSame(JsonNode pegs, String member) {
    JsonNode a = pegs.path("a").path(member);
    JsonNode b = pegs.path("b").path(member);
    return a.isNumber() && b.isNumber() && a.doubleValue() == b.doubleValue();
  }

  private static void judgeTurning(ObjectNode body, Findings findings) {
    JsonNode turning = body.path("turning");
    if (!turning.isObject()) {
      return;
    }
    JsonNode chord = turning.path("lastPoleChord");
    JsonNode degrees = turning.path("degreesEach");
    if (chord.isMissingNode() && degrees.isMissingNode()) {
      findings.broken("/turning/lastPoleChord", "is required, or degreesEach in its place");
    } else if (!chord.isMissingNode() && !degrees.isMissingNode()) {
      findings.broken("/turning/degreesEach", "must not be given beside lastPoleChord");
    } else if (degrees.isNumber()) {
      judgeRungs("/turning/degreesEach", degrees.doubleValue(), turning, findings);
    } else if (chord.isNumber() && isLine(body.path("setup"))) {
      judgeChord(chord.doubleValue(), body, findings);
    }
  }

  private static boolean isLine(JsonNode setup) {
    return setup.path("poles").asInt() >= 2 && setup.path("spacing").asDouble() > 0;
  }

  private static void judgeChord(double chord, ObjectNode body, Findings findings) {
    JsonNode setup = body.path("setup");
    PoleLine line = new PoleLine(setup.path("poles").asInt(), setup.path("spacing").asDouble());
    if (chord > line.longestChord()) {
      findings.broken(
          "/turning/lastPoleChord",
          String.format(
              Locale.ROOT, "is more than the last pole can move: %.3f m", line.longestChord()));
    } else if (chord > 0) {
      judgeRungs("/turning/lastPoleChord", line.turnOfChord(chord), body.path("turning"), findings);
    }
  }

  private static void judgeRungs(
      String pointer, double degreesEach, JsonNode turning, Findings findings) {
    double to = turning.path("to").asDouble();
    if (degreesEach > 0 && to / degreesEach > TurningTable.RUNGS_MAX) {
      findings.broken(
          pointer,
          "is so short that a side has more than %d rungs".formatted(TurningTable.RUNGS_MAX));
    }
  }
}
