package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.care.CareNote;
import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.PlanOutcome;
import dev.poleward.domain.planning.PlannedDrill;
import dev.poleward.domain.planning.RewardSteps;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.RewardStep;
import dev.poleward.domain.programme.Stage;
import dev.poleward.service.codec.Writing;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Plans as they are recorded and shown. */
final class PlanShape {

  private PlanShape() {}

  /** What is recorded of a plan: the data of {@code plan.issued}. */
  static ObjectNode document(
      String plan,
      String dogId,
      ObjectNode asked,
      DogStanding dog,
      SessionPlan session,
      Optional<String> text,
      RewardSteps rewards,
      CarePermit permit) {
    Iterator<String> reasons = new PlanWords(dog).reasons(session).iterator();
    return new Writing()
        .put("plan", plan)
        .put("dog", dogId)
        .put("programme", dog.programme().id())
        .put("programmeVersion", dog.programme().version())
        .put("stage", dog.current().map(stage -> stage.stage().id()).orElse(null))
        .put("asked", asked)
        .put("reps", session.reps())
        .put("expectedClean", session.blocks().isEmpty() ? null : session.expectedClean())
        .put("text", text.orElse(null))
        .putObjects("drills", session.blocks(), block -> drill(dog, block, reasons.next(), rewards))
        .putObjects("notes", permit.notes(), PlanShape::note)
        .done();
  }

  static ObjectNode note(CareNote note) {
    return new Writing()
        .put("id", note.id())
        .put("severity", note.severity())
        .put("text", note.text())
        .put("source", note.source())
        .done();
  }

  private static ObjectNode drill(
      DogStanding dog, PlanBlock block, String reason, RewardSteps rewards) {
    DrillOfStage of = block.drill();
    Stage stage = dog.programme().stage(of.stage()).orElseThrow();
    Estimate expected = block.expected();
    ObjectNode drill = laidOut(stage, of.drill()).put("reps", block.reps()).done();
    drill.put("text", reason);
    drill.put("stage", of.stage());
    drill.put("purpose", Writing.wireName(block.purpose()));
    drill.put("expectedClean", expected.value());
    drill.put("expectedLower", expected.lower());
    drill.put("expectedUpper", expected.upper());
    int step = rewards.of(of);
    RewardStep reward = stage.terms().rewardLadder().steps().get(step);
    drill.put("rewardStep", step);
    if (reward.name() != null) {
      drill.put("rewardName", reward.name());
    }
    DrillOfStage easier = block.fallback();
    if (easier != null) {
      Stage ofEasier = dog.programme().stage(easier.stage()).orElseThrow();
      drill.set("easier", laidOut(ofEasier, easier.drill()).done());
    }
    return drill;
  }

  private static Writing laidOut(Stage stage, Drill drill) {
    return new Writing()
        .put("poles", drill.poles())
        .put("spacing", stage.ground().line().spacing())
        .put("leadIn", drill.runUp().leadIn())
        .put("leadInDistance", stage.ground().leadInDistance())
        .put("angle", drill.rung().angle().degrees())
        .putPrinted("clock", drill.rung().angle().clock().orElse(null))
        .put("manoeuvre", drill.handling().manoeuvre())
        .put("dogSide", drill.handling().dogSide())
        .put("backChainStep", drill.runUp().step())
        .put("jumpTurn", drill.runUp().turn());
  }

  /** The drills of a recorded plan, but for those of old that leave open what was to be run. */
  static List<PlannedDrill> planned(ObjectNode document) {
    List<PlannedDrill> planned = new ArrayList<>();
    document.path("drills").forEach(drill -> drill(drill).ifPresent(planned::add));
    return planned;
  }

  /** A recorded drill; empty when it leaves open what is to be run. */
  static Optional<PlannedDrill> drill(JsonNode drill) {
    if (!drill.has("poles")
        || !drill.has("leadIn")
        || !drill.has("angle")
        || !drill.has("manoeuvre")) {
      return Optional.empty();
    }
    return Optional.of(
        new PlannedDrill(
            drill.get("poles").intValue(),
            required(LeadIn.class, drill.get("leadIn")),
            optional(BackChainStep.class, drill.get("backChainStep")),
            optional(JumpTurn.class, drill.get("jumpTurn")),
            new EntryAngle(drill.get("angle").doubleValue()),
            required(Manoeuvre.class, drill.get("manoeuvre")),
            optional(DogSide.class, drill.get("dogSide")),
            drill.path("reps").asInt(1)));
  }

  private static <E extends Enum<E>> E required(Class<E> type, JsonNode word) {
    return Enum.valueOf(type, word.textValue().toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  private static <E extends Enum<E>> @Nullable E optional(Class<E> type, @Nullable JsonNode word) {
    return word == null ? null : required(type, word);
  }

  /** A plan with what came of it. */
  static ObjectNode answer(ObjectNode document, String issued, PlanOutcome outcome) {
    ObjectNode answer = document.deepCopy();
    answer.put("issued", issued);
    ArrayNode done = answer.putArray("done");
    outcome
        .drills()
        .forEach(
            drill ->
                done.add(
                    new Writing().put("reps", drill.reps()).put("clean", drill.clean()).done()));
    answer.set(
        "came",
        new Writing()
            .put("reps", outcome.reps())
            .put("clean", outcome.clean())
            .put("cleanShare", share(outcome))
            .put("otherReps", outcome.otherReps())
            .put("otherClean", outcome.otherClean())
            .done());
    return answer;
  }

  private static @Nullable ObjectNode share(PlanOutcome outcome) {
    if (outcome.reps() == 0) {
      return null;
    }
    Estimate share =
        new Proportion(outcome.clean(), outcome.reps() - outcome.clean())
            .wilson(Confidence.OF_95_PERCENT);
    return ShareShape.of(share);
  }
}
