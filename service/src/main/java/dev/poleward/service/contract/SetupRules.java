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
