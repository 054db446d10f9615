package dev.poleward.service.http;

import dev.poleward.domain.outlook.StartingStage;
import dev.poleward.domain.outlook.StartingStage.Chance;
import dev.poleward.domain.outlook.StartingStage.Finding;
import dev.poleward.domain.outlook.StartingStage.Finding.NothingAllowed;
import dev.poleward.domain.outlook.StartingStage.Finding.Proposed;
import dev.poleward.domain.outlook.StartingStage.Finding.TooFewReps;
import dev.poleward.domain.outlook.StartingStage.Finding.Undecided;
import dev.poleward.domain.programme.Stage;
import dev.poleward.service.render.Counted;
import java.util.ArrayList;
import java.util.List;

/** Why a stage is proposed to start at, or none is. */
final class StartingStageWords {

  private StartingStageWords() {}

  /** The contract's word for it. */
  static String status(Finding finding) {
    return switch (finding) {
      case TooFewReps _ -> "not-enough-reps";
      case Undecided _ -> "undecided";
      case NothingAllowed _ -> "not-allowed";
      case Proposed _ -> "proposed";
    };
  }

  /** In whole sentences, as a trainer would say it. */
  static List<String> reasons(StartingStage stage) {
    return switch (stage.finding()) {
      case TooFewReps _ ->
          List.of(
              "%s of the %d that it takes: run those below, one of each, the first one first."
                  .formatted(Counted.of(stage.reps(), "rep"), StartingStage.REPS_MIN));
      case Undecided _ ->
          List.of(
              "%s that hardly tell the stages apart: run those below, one of each, the first one first."
                  .formatted(Counted.of(stage.reps(), "rep")));
      case NothingAllowed _ ->
          List.of(
              "For its age or its health the dog may run none of the stages that it could start at: see care.");
      case Proposed proposed -> reasons(proposed, stage.stages());
    };
  }

  private static List<String> reasons(Proposed proposed, List<Chance> stages) {
    List<String> reasons = new ArrayList<>();
    reasons.add(shown(proposed.shown(), stages));
    if (!proposed.proposed().equals(proposed.shown())) {
      reasons.add(
          "For its age or its health the dog may run nothing of it, but of %s before it: see care."
              .formatted(name(proposed.proposed())));
    }
    reasons.add(
        proposed.clear()
            ? "The reps leave little doubt."
            : "Doubt is left: the reps below would tell more.");
    return reasons;
  }

  private static String shown(Stage shown, List<Chance> stages) {
    if (stages.stream().allMatch(Chance::ruledOut)) {
      return "The reps rule out every stage: nothing may be left to learn, and %s is the last."
          .formatted(name(shown));
    }
    return shown.equals(stages.getFirst().stage())
        ? "The reps do not rule out the first stage, %s.".formatted(name(shown))
        : "%s is the earliest stage that the reps do not rule out.".formatted(name(shown));
  }

  private static String name(Stage stage) {
    return "\"%s\"".formatted(stage.name() == null ? stage.id() : stage.name());
  }
}
