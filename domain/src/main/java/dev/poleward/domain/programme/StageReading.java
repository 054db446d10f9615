package dev.poleward.domain.programme;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.PoleLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Reads the stages of a document.
 *
 * @param spacing metres from pole to pole, of the programme
 * @param tolerance degrees, of the programme
 * @param rule the programme's own, if it has one
 * @param ladder the programme's own, or the usual one
 */
record StageReading(
    double spacing, double tolerance, @Nullable MovingOnRule rule, RewardLadder ladder) {

  private static final int HANDLINGS_MAX = 32;
  private static final List<String> REQUIRED =
      List.of("stage", "poles", "leadIn", "entries", "handlings");

  private record ListedHandling(Part part, Handling handling) {}

  /** Reads what stages take from their programme. */
  static StageReading inheriting(Part document) {
    Double spacing = ProgrammeDocument.spacing(document);
    Double tolerance = tolerance(document);
    RewardLadder ladder = LadderReading.read(document);
    return new StageReading(
        spacing == null ? StageGround.SPACING_USUAL : spacing,
        tolerance == null ? StageTerms.TOLERANCE_DEGREES_USUAL : tolerance,
        RuleReading.read(document),
        ladder == null ? RewardLadder.USUAL : ladder);
  }

  private static @Nullable Double tolerance(Part part) {
    return part.number("toleranceDegrees", d -> d >= 0.5 && d <= 15, "from 0.5 to 15");
  }

  /** The stages in their places; null for those that are not in order. */
  List<@Nullable Stage> stages(List<Part> parts) {
    List<@Nullable Stage> stages = new ArrayList<>();
    parts.forEach(part -> stages.add(stage(part)));
    return stages;
  }

  private @Nullable Stage stage(Part part) {
    REQUIRED.forEach(part::require);
    String id = part.id("stage");
    String name = part.text("name", ProgrammeDocument.NAME_CHARACTERS_MAX);
    PoleLine line = ProgrammeDocument.line(part, spacing);
    LeadIn leadIn = part.choice("leadIn", LeadIn.class);
    Double distance = part.number("leadInDistance", d -> d >= 0 && d <= 50, "from 0 to 50");
    Entries entries = EntriesReading.read(part, line);
    List<ListedHandling> handlings = handlings(part);
    List<BackChainStep> steps = part.choices("backChainSteps", 3, BackChainStep.class);
    if (distance != null && leadIn == LeadIn.NONE) {
      part.fault("leadInDistance", "goes with a jump or a tunnel as the lead-in only");
    }
    if (!steps.isEmpty() && leadIn != null && leadIn != LeadIn.JUMP) {
      part.fault("backChainSteps", "go with a jump as the lead-in only");
    }
    List<String> prerequisites =
        part.ids("prerequisites", ProgrammeDocument.STAGES_MAX).stream()
            .filter(Objects::nonNull)
            .toList();
    StageTerms terms = terms(part);
    if (id == null || line == null || leadIn == null || entries == null) {
      return null;
    }
    judgeReach(part, handlings, entries.rungs(line));
    return new Stage(
        id,
        name,
        new StageGround(line, leadIn, distance),
        entries,
        handlings.stream().map(ListedHandling::handling).toList(),
        steps,
        prerequisites,
        terms);
  }

  private StageTerms terms(Part part) {
    Boolean probe = part.truth("probe");
    StageKind kind = Boolean.TRUE.equals(probe) ? StageKind.PROBE : StageKind.REGULAR;
    StageOrder order = part.choice("order", StageOrder.class);
    Double own = tolerance(part);
    MovingOnRule ownRule = RuleReading.read(part);
    RewardLadder ownLadder = LadderReading.read(part);
    return new StageTerms(
        kind,
        order == null ? StageOrder.MEASURED : order,
        own == null ? tolerance : own,
        ownRule == null ? inherited(kind) : ownRule,
        ownLadder == null ? ladder : ownLadder);
  }

  private MovingOnRule inherited(StageKind kind) {
    return switch (kind) {
      case PROBE -> MovingOnRule.USUAL_OF_PROBES;
      case REGULAR -> rule == null ? MovingOnRule.USUAL : rule;
    };
  }

  private static List<ListedHandling> handlings(Part stage) {
    List<ListedHandling> handlings = new ArrayList<>();
    for (Part part : stage.parts("handlings", 1, HANDLINGS_MAX)) {
      part.require("manoeuvre");
      Manoeuvre manoeuvre = part.choice("manoeuvre", Manoeuvre.class);
      DogSide side = part.choice("dogSide", DogSide.class);
      Double until =
          part.number("untilAngle", d -> d >= 0 && EntryAngle.isAllowed(d), "from 0 to below 180");
      if (manoeuvre == null) {
        continue;
      }
      if (side != null && !Handling.knowsSides(manoeuvre)) {
        part.fault("dogSide", "does not go with a %s".formatted(Part.written(manoeuvre)));
      }
      Handling handling = new Handling(manoeuvre, side, until);
      if (handlings.stream().anyMatch(before -> before.handling().overlaps(handling))) {
        part.fault("is listed before, with the same dog side or with any");
      }
      handlings.add(new ListedHandling(part, handling));
    }
    return handlings;
  }

  private static void judgeReach(Part stage, List<ListedHandling> handlings, List<Rung> rungs) {
    for (ListedHandling listed : handlings) {
      if (!listed.handling().isAskedAt(rungs.getFirst())) {
        listed.part().fault("untilAngle", "is below every entry of the stage");
      }
    }
    if (!handlings.isEmpty()
        && handlings.stream().noneMatch(each -> each.handling().isAskedAt(rungs.getLast()))) {
      stage.fault("handlings", "leave the largest entries of the stage without any");
    }
  }
}
