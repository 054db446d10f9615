package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.outlook.StartingStage;
import dev.poleward.domain.outlook.StartingStage.Chance;
import dev.poleward.domain.outlook.StartingStage.ToTry;
import dev.poleward.domain.programme.Stage;
import dev.poleward.service.codec.Writing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A proposed stage as the contract shows it. Immutable; safe for use by many threads. */
final class StartingStageShape {

  /**
   * A proposal.
   *
   * @param proposal empty when the dog's programme has a document with faults
   */
  ObjectNode of(String dog, LocalDay day, Optional<StartingStage> proposal) {
    Writing shape = new Writing().put("dog", dog).putPrinted("agedTo", day.date());
    if (proposal.isEmpty()) {
      return shape
          .put("status", "no-programme")
          .putTexts(
              "reasons", List.of("The programme that is assigned has a document with faults."))
          .done();
    }
    StartingStage stage = proposal.get();
    return shape
        .put("status", stage.proposed() == null ? "not-enough-reps" : "proposed")
        .putTexts("reasons", reasons(stage))
        .put("programme", DrillShape.of(stage.programme()))
        .put("reps", stage.reps())
        .put("proposed", proposed(stage))
        .put("clear", stage.clear())
        .putObjects("stages", stage.stages(), StartingStageShape::chance)
        .put("finished", Thousandths.of(stage.finished()))
        .putObjects("next", stage.next(), StartingStageShape::toTry)
        .done();
  }

  private static @Nullable ObjectNode proposed(StartingStage stage) {
    Stage proposed = stage.proposed();
    return proposed == null ? null : DrillShape.of(proposed).done();
  }

  private static ObjectNode chance(Chance chance) {
    return DrillShape.of(chance.stage()).put("chance", Thousandths.of(chance.chance())).done();
  }

  private static ObjectNode toTry(ToTry toTry) {
    return new Writing()
        .put("drill", DrillShape.of(toTry.drill()))
        .put("expectedClean", Thousandths.of(toTry.clean()))
        .done();
  }

  private static List<String> reasons(StartingStage stage) {
    List<String> reasons = new ArrayList<>();
    if (stage.proposed() == null) {
      reasons.add(
          "%d reps of %d that it takes: run those below, one of each, the first one first."
              .formatted(stage.reps(), StartingStage.REPS_MIN));
    } else if (stage.clear()) {
      reasons.add("The reps leave little doubt.");
    } else if (stage.next().isEmpty()) {
      reasons.add("Doubt is left: watch the first sessions, and step back early.");
    } else {
      reasons.add("Doubt is left: the reps below would tell more.");
    }
    return reasons;
  }
}
