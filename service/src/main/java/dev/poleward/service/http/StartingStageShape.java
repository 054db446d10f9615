package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.outlook.StartingStage;
import dev.poleward.domain.outlook.StartingStage.Chance;
import dev.poleward.domain.outlook.StartingStage.ToTry;
import dev.poleward.domain.programme.Stage;
import dev.poleward.service.codec.Writing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A proposed stage as the contract shows it. Immutable; safe for use by many threads. */
final class StartingStageShape {

  /** A programme that cannot be read. */
  ObjectNode withoutProgramme(String dog, LocalDay day) {
    return named(dog, day)
        .put("status", "no-programme")
        .putTexts("reasons", List.of("The programme that is assigned has a document with faults."))
        .done();
  }

  /**
   * A proposal.
   *
   * @param stops why the dog is not to run at all, in sentences; none where it may
   */
  ObjectNode of(String dog, LocalDay day, StartingStage stage, List<String> stops) {
    boolean rests = !stops.isEmpty();
    return named(dog, day)
        .put("status", rests ? "resting" : StartingStageWords.status(stage.finding()))
        .putTexts("reasons", rests ? stops : StartingStageWords.reasons(stage))
        .put("programme", DrillShape.of(stage.programme()))
        .put("reps", stage.reps())
        .put("proposed", rests ? null : proposed(stage))
        .put("clear", !rests && stage.clear())
        .putObjects("stages", stage.stages(), StartingStageShape::chance)
        .put("finished", Thousandths.of(stage.finished()))
        .putObjects("next", rests ? List.of() : stage.next(), StartingStageShape::toTry)
        .done();
  }

  private static Writing named(String dog, LocalDay day) {
    return new Writing().put("dog", dog).putPrinted("agedTo", day.date());
  }

  private static @Nullable ObjectNode proposed(StartingStage stage) {
    Stage proposed = stage.proposed();
    return proposed == null ? null : DrillShape.of(proposed).done();
  }

  private static ObjectNode chance(Chance chance) {
    return DrillShape.of(chance.stage())
        .put("chance", Thousandths.of(chance.chance()))
        .put("ruledOut", chance.ruledOut())
        .done();
  }

  private static ObjectNode toTry(ToTry toTry) {
    return new Writing()
        .put("drill", DrillShape.of(toTry.drill()))
        .put("expectedClean", Thousandths.of(toTry.clean()))
        .done();
  }
}
