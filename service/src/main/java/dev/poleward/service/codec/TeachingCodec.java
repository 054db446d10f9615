package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.AimEvent;
import dev.poleward.domain.event.AimEvent.GoalSet;
import dev.poleward.domain.event.AimEvent.HomeworkSet;
import dev.poleward.domain.event.AimEvent.LoadNoted;
import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.event.ClassEvent;
import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.event.ClassEvent.ClassLeft;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.ProgrammeEvent;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Classes, programmes and aims as JSON. */
final class TeachingCodec {

  private TeachingCodec() {}

  static ClassFormed readFormed(Members in) {
    return new ClassFormed(
        in.text("class"),
        in.text("name"),
        in.optionalText("instructor"),
        in.optionalText("schedule"));
  }

  static ClassJoined readJoined(Members in) {
    return new ClassJoined(in.text("class"), in.text("dog"));
  }

  static ClassLeft readLeft(Members in) {
    return new ClassLeft(in.text("class"), in.text("dog"));
  }

  static ObjectNode write(ClassEvent event) {
    Writing out = new Writing().put("class", event.group());
    switch (event) {
      case ClassFormed e ->
          out.put("name", e.name()).put("instructor", e.instructor()).put("schedule", e.schedule());
      case ClassJoined e -> out.put("dog", e.dog());
      case ClassLeft e -> out.put("dog", e.dog());
    }
    return out.done();
  }

  static ProgrammePublished readPublished(Members in) {
    Integer version = in.optionalWhole("version");
    return new ProgrammePublished(
        in.text("programme"), version == null ? 1 : version, in.document());
  }

  static ProgrammeAssigned readAssigned(Members in) {
    return new ProgrammeAssigned(
        in.text("dog"), in.text("programme"), in.optionalText("startStage"));
  }

  static PlanIssued readPlan(Members in) {
    return new PlanIssued(in.text("plan"), in.text("dog"), in.document());
  }

  static ObjectNode write(ProgrammeEvent event) {
    return switch (event) {
      case ProgrammePublished e -> Documents.write(e.document());
      case PlanIssued e -> Documents.write(e.document());
      case ProgrammeAssigned e ->
          new Writing()
              .put("dog", e.dog())
              .put("programme", e.programme())
              .put("startStage", e.startStage())
              .done();
    };
  }

  static HomeworkSet readHomework(Members in) {
    List<Map<String, Object>> drills =
        Objects.requireNonNull(in.optionalList("drills", TeachingCodec::document), "drills");
    return new HomeworkSet(in.text("dog"), drills, in.date("due"));
  }

  private static Map<String, Object> document(JsonNode node) {
    return Documents.read((ObjectNode) node);
  }

  static GoalSet readGoal(Members in) {
    return new GoalSet(in.text("dog"), in.date("by"), in.optionalText("stage"));
  }

  static TrialRun readTrial(Members in) {
    return new TrialRun(
        in.text("dog"),
        in.whole("poles"),
        in.choice("outcome", Outcome.class),
        in.optionalWhole("atPole"),
        in.optionalNumber("seconds"),
        in.optionalNumber("angle"));
  }

  static LoadNoted readLoad(Members in) {
    return new LoadNoted(in.text("dog"), in.text("kind"), in.number("minutes"));
  }

  static ObjectNode write(AimEvent event) {
    Writing out = new Writing().put("dog", event.dog());
    switch (event) {
      case HomeworkSet e ->
          out.putObjects("drills", e.drills(), Documents::write).putPrinted("due", e.due());
      case GoalSet e -> out.putPrinted("by", e.by()).put("stage", e.stage());
      case TrialRun e ->
          out.put("poles", e.poles())
              .put("outcome", e.outcome())
              .put("atPole", e.atPole())
              .put("seconds", e.seconds())
              .put("angle", e.angle());
      case LoadNoted e -> out.put("kind", e.kind()).put("minutes", e.minutes());
    }
    return out.done();
  }
}
