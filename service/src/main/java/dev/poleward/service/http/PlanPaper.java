package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.care.CareNote;
import dev.poleward.domain.care.Severity;
import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.planning.PlannedDrill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.service.page.PlanOnPaper;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A recorded plan, made ready for paper. */
final class PlanPaper {

  /** Plans of old that do not say it were made for what is customary, metres. */
  private static final double SPACING_USUAL = 0.6;

  private PlanPaper() {}

  /**
   * The plan.
   *
   * @param programme that it was made from; empty where that is no longer known
   * @param callName of the dog
   * @param day the club's, when it was handed out
   */
  static PlanOnPaper of(
      ObjectNode document, Optional<Programme> programme, String callName, LocalDate day) {
    List<PlanOnPaper.Drill> drills = new ArrayList<>();
    for (JsonNode drill : document.path("drills")) {
      PlanShape.drill(drill).ifPresent(planned -> drills.add(drill(drill, planned)));
    }
    List<CareNote> notes = new ArrayList<>();
    for (JsonNode note : document.path("notes")) {
      notes.add(
          new CareNote(
              note.path("id").asText(),
              Severity.valueOf(note.path("severity").asText("note").toUpperCase(Locale.ROOT)),
              note.path("text").asText(),
              note.path("source").asText()));
    }
    return new PlanOnPaper(
        document.path("plan").asText(),
        callName,
        day,
        programme.map(Programme::name).orElse(document.path("programme").asText("")),
        document.has("stage") ? stage(document.get("stage").asText(), programme) : null,
        document.path("text").textValue(),
        drills,
        notes);
  }

  /** A stage without a name goes by its id. */
  private static String stage(String id, Optional<Programme> programme) {
    return programme
        .flatMap(known -> known.stage(id))
        .flatMap(known -> Optional.ofNullable(known.name()))
        .orElse(id);
  }

  private static PlanOnPaper.Drill drill(JsonNode drill, PlannedDrill planned) {
    return new PlanOnPaper.Drill(
        setup(drill, planned),
        TrainersWords.planned(planned),
        planned.reps(),
        drill.has("expectedClean") ? drill.get("expectedClean").doubleValue() : null,
        drill.path("rewardName").textValue(),
        drill.path("text").textValue(),
        easier(drill.path("easier")));
  }

  private static @Nullable String easier(JsonNode easier) {
    return PlanShape.drill(easier).map(TrainersWords::planned).orElse(null);
  }

  /** What has to stand. Poles alone, from where the jump will be, need no jump. */
  private static Setup setup(JsonNode drill, PlannedDrill planned) {
    boolean alone = planned.step() == BackChainStep.POLES_ONLY;
    EntryAngle angle = planned.angle();
    return new Setup(
        planned.poles(),
        drill.path("spacing").asDouble(SPACING_USUAL),
        alone ? LeadIn.NONE : planned.leadIn(),
        drill.has("leadInDistance") ? drill.get("leadInDistance").doubleValue() : null,
        new Approach(angle, null),
        null,
        null,
        null);
  }
}
