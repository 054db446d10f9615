package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.ClockPosition;
import java.util.Optional;
import java.util.Set;

/** What the contract asks of setups and directions that no schema can say. */
final class SetupRules {

  private static final Set<String> WITH_DIRECTION = Set.of("jump", "tunnel");

  private SetupRules() {}

  /** A setup with a jump or a tunnel says where that stands, and its direction agrees. */
  static void judgeSetup(JsonNode setup, String pointer, Findings findings) {
    String leadIn = setup.path("leadIn").textValue();
    if (leadIn != null
        && WITH_DIRECTION.contains(leadIn)
        && !setup.has("angle")
        && !setup.has("clock")) {
      findings.broken(
          pointer + "/angle", "is required with a %s, or clock in its place".formatted(leadIn));
    }
    judgeDirection(setup, pointer, findings);
  }

  /**
   * A fault is at one of the poles that stood. Which stood is known here only where it is said
   * beside it; of the setups of a session that cannot be judged, for they may come later.
   *
   * @param poles how many stood, where that is said
   */
  static void judgePole(JsonNode data, JsonNode poles, String pointer, Findings findings) {
    JsonNode pole = data.path("atPole");
    if (pole.isNumber() && poles.isNumber() && pole.doubleValue() > poles.doubleValue()) {
      findings.broken(
          pointer + "/atPole",
          "must be one of the %d poles that stood".formatted(poles.longValue()));
    }
  }

  /** An angle and a clock position that are given together mean the same. */
  static void judgeDirection(JsonNode node, String pointer, Findings findings) {
    JsonNode angle = node.path("angle");
    JsonNode clock = node.path("clock");
    if (!angle.isNumber() || !clock.isTextual()) {
      return;
    }
    Optional<ClockPosition> position = ClockPosition.read(clock.textValue());
    if (position.isPresent() && !Approach.agree(angle.doubleValue(), position.get())) {
      findings.broken(
          pointer + "/clock",
          "must agree with angle: %s is %d degrees"
              .formatted(clock.textValue(), Math.round(position.get().angle().degrees())));
    }
  }
}
