package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.LayoutQuestion;
import dev.poleward.domain.layout.LayoutQuestion.Ground;
import dev.poleward.domain.layout.LayoutQuestion.Turning;
import dev.poleward.domain.layout.Moves;
import dev.poleward.domain.layout.Pegs;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.layout.RuleBody;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.layout.Spot;
import dev.poleward.service.codec.SetupCodec;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Reads what the contract calls {@code AskForLayout}, once it was judged. */
final class LayoutAsked {

  private LayoutAsked() {}

  static LayoutQuestion of(ObjectNode body) {
    Setup setup = SetupCodec.read((ObjectNode) body.get("setup"));
    return new LayoutQuestion(
        setup,
        body.get("standing") instanceof ObjectNode standing ? SetupCodec.read(standing) : null,
        stays(body.path("stays").textValue()),
        turning(body.path("turning"), setup),
        ground(body.path("ground")),
        pegs(body.path("pegs")),
        body.path("turningRadius").asDouble(LayoutQuestion.TURNING_RADIUS_USUAL),
        body.path("clearance").asDouble(LayoutQuestion.CLEARANCE_USUAL),
        body.path("jumpWidth").asDouble(LayoutQuestion.JUMP_WIDTH_USUAL),
        body.has("rules")
            ? RuleBody.valueOf(body.get("rules").textValue().toUpperCase(Locale.ROOT))
            : null,
        body.has("polesRunTowards") ? body.get("polesRunTowards").doubleValue() : null);
  }

  private static Moves.@Nullable Stays stays(@Nullable String said) {
    if (said == null) {
      return null;
    }
    return said.equals("poles") ? Moves.Stays.POLES : Moves.Stays.LEAD_IN;
  }

  private static @Nullable Turning turning(JsonNode said, Setup setup) {
    if (said.isMissingNode()) {
      return null;
    }
    double each =
        said.has("degreesEach")
            ? said.get("degreesEach").doubleValue()
            : new PoleLine(setup.poles(), setup.spacing())
                .turnOfChord(said.get("lastPoleChord").doubleValue());
    return new Turning(each, said.get("to").doubleValue());
  }

  private static @Nullable Ground ground(JsonNode said) {
    return said.isMissingNode()
        ? null
        : new Ground(
            said.get("length").doubleValue(),
            said.get("width").doubleValue(),
            said.path("around").asDouble(Ground.AROUND_USUAL));
  }

  private static @Nullable Pegs pegs(JsonNode said) {
    return said.isMissingNode() ? null : new Pegs(spot(said.get("a")), spot(said.get("b")));
  }

  private static Spot spot(JsonNode said) {
    return new Spot(said.get("x").doubleValue(), said.get("y").doubleValue());
  }
}
