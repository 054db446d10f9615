package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.Stage;
import dev.poleward.service.codec.SetupCodec;
import dev.poleward.service.codec.Writing;

/**
 * Reps of a dog over one setup.
 *
 * @param told as the contract's {@code RunningOrderDrill}
 */
record DrillToRun(Setup setup, int reps, ObjectNode told) {

  /** One that came with the question. */
  static DrillToRun said(ObjectNode drill) {
    return drill.get("setup") instanceof ObjectNode setup
        ? new DrillToRun(SetupCodec.read(setup), drill.get("reps").intValue(), drill)
        : throwUnjudged();
  }

  private static DrillToRun throwUnjudged() {
    throw new IllegalStateException("unreachable: a drill without a setup was refused");
  }

  /** One of a plan. */
  static DrillToRun planned(Programme programme, PlanBlock block) {
    Stage stage = programme.stage(block.drill().stage()).orElseThrow();
    Drill drill = block.drill().drill();
    Setup setup = stage.ground().laidFor(drill);
    ObjectNode told =
        new Writing()
            .put("setup", SetupCodec.write(setup))
            .put("reps", block.reps())
            .put("manoeuvre", drill.handling().manoeuvre())
            .put("dogSide", drill.handling().dogSide())
            .put("backChainStep", drill.runUp().step())
            .put("jumpTurn", drill.runUp().turn())
            .put("text", TrainersWords.drill(drill))
            .done();
    return new DrillToRun(setup, block.reps(), told);
  }

  /** The same with so many reps. */
  ObjectNode told(int reps) {
    return told.deepCopy().put("reps", reps);
  }
}
