package dev.poleward.domain.programme;

import dev.poleward.domain.event.Reward;
import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.programme.Entries.Clocks;
import dev.poleward.domain.programme.Entries.Turned;
import dev.poleward.domain.programme.MovingOnRule.KOfN;
import dev.poleward.domain.programme.MovingOnRule.Run;
import dev.poleward.domain.programme.MovingOnRule.Sequential;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes a programme as a document that says everything, also what could be left out. Read again it
 * is the same programme.
 */
public final class DocumentWriting {

  private DocumentWriting() {}

  /** The document of a programme. */
  public static Map<String, Object> of(Programme programme) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("programme", programme.id());
    out.put("version", (long) programme.version());
    out.put("name", programme.name());
    put(out, "description", programme.description());
    out.put("cleanTarget", programme.cleanTarget());
    out.put("cleanFloor", programme.cleanFloor());
    out.put("stages", programme.stages().stream().map(DocumentWriting::stage).toList());
    return out;
  }

  private static Map<String, Object> stage(Stage stage) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("stage", stage.id());
    put(out, "name", stage.name());
    out.put("poles", (long) stage.ground().line().poles());
    out.put("spacing", stage.ground().line().spacing());
    out.put("leadIn", Part.written(stage.ground().leadIn()));
    put(out, "leadInDistance", stage.ground().leadInDistance());
    out.put("entries", entries(stage.entries()));
    out.put("handlings", stage.handlings().stream().map(DocumentWriting::handling).toList());
    out.put("backChainSteps", stage.backChainSteps().stream().map(Part::written).toList());
    out.put("prerequisites", stage.prerequisites());
    out.put("probe", stage.terms().kind() == StageKind.PROBE);
    out.put("order", Part.written(stage.terms().order()));
    out.put("toleranceDegrees", stage.terms().toleranceDegrees());
    out.put("rule", rule(stage.terms().rule()));
    out.put("rewardLadder", ladder(stage.terms().rewardLadder()));
    return out;
  }

  private static Map<String, Object> entries(Entries entries) {
    return switch (entries) {
      case Clocks(List<ClockPosition> positions) ->
          Map.of("clocks", positions.stream().map(ClockPosition::toString).toList());
      case Turned turned -> Map.of("rungs", rungs(turned));
    };
  }

  private static Map<String, Object> rungs(Turned turned) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("start", turned.start());
    out.put("end", turned.end());
    switch (turned.step()) {
      case TurnStep.Degrees(double degrees) -> out.put("stepDegrees", degrees);
      case TurnStep.Chord(double metres) -> out.put("stepChord", metres);
    }
    out.put("sides", Part.written(turned.sides()));
    return out;
  }

  private static Map<String, Object> handling(Handling handling) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("manoeuvre", Part.written(handling.manoeuvre()));
    put(out, "dogSide", handling.dogSide() == null ? null : Part.written(handling.dogSide()));
    put(out, "untilAngle", handling.untilAngle());
    return out;
  }

  private static Map<String, Object> rule(MovingOnRule rule) {
    Map<String, Object> out = new LinkedHashMap<>();
    switch (rule) {
      case KOfN it -> {
        out.put("method", "k-of-n");
        out.put("k", (long) it.k());
        out.put("n", (long) it.n());
      }
      case Run it -> {
        out.put("method", "run");
        out.put("length", (long) it.length());
      }
      case Sequential it -> {
        out.put("method", "sequential");
        out.put("mastered", it.mastered());
        out.put("notYet", it.notYet());
        out.put("wrongMoveOn", it.wrongMoveOn());
        out.put("wrongHold", it.wrongHold());
      }
    }
    out.put("stepBackAfter", (long) rule.stepBackAfter());
    out.put("wrongMisfit", rule.wrongMisfit());
    return out;
  }

  private static List<Map<String, Object>> ladder(RewardLadder ladder) {
    return ladder.steps().stream().map(DocumentWriting::step).toList();
  }

  private static Map<String, Object> step(RewardStep step) {
    Map<String, Object> out = new LinkedHashMap<>();
    put(out, "name", step.name());
    out.put("rewards", step.rewards().stream().map(DocumentWriting::reward).toList());
    return out;
  }

  private static Map<String, Object> reward(Reward reward) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("kind", Part.written(reward.kind()));
    out.put("at", Part.written(reward.at()));
    put(out, "count", reward.count() == null ? null : Long.valueOf(reward.count()));
    put(out, "delivery", reward.delivery() == null ? null : Part.written(reward.delivery()));
    return out;
  }

  private static void put(Map<String, Object> out, String name, @Nullable Object value) {
    if (value != null) {
      out.put(name, value);
    }
  }
}
