package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import dev.poleward.service.codec.Writing;

/** Parts of programmes as the contract shows them in answers. */
final class DrillShape {

  private DrillShape() {}

  /** A drill of a programme. */
  static ObjectNode of(Drill drill) {
    return new Writing()
        .put("poles", drill.poles())
        .put("leadIn", drill.runUp().leadIn())
        .put("backChainStep", drill.runUp().step())
        .put("jumpTurn", drill.runUp().turn())
        .put("entrySide", drill.rung().side())
        .put("angle", drill.rung().angle().degrees())
        .putPrinted("clock", drill.rung().angle().clock().orElse(null))
        .put("manoeuvre", drill.handling().manoeuvre())
        .put("dogSide", drill.handling().dogSide())
        .done();
  }

  /** What one verdict is about, with the stage that it belongs to. */
  static Writing of(Stage stage, RungPool pool) {
    return new Writing()
        .put("stage", stage.id())
        .put("backChainStep", pool.step())
        .put("entrySide", pool.rung().side())
        .put("angle", pool.rung().angle().degrees())
        .putPrinted("clock", pool.rung().angle().clock().orElse(null));
  }

  /** Which document. */
  static ObjectNode of(Programme programme) {
    return new Writing()
        .put("programme", programme.id())
        .put("version", programme.version())
        .put("name", programme.name())
        .done();
  }

  /** What a stage is called. */
  static Writing of(Stage stage) {
    return new Writing().put("stage", stage.id()).put("name", stage.name());
  }
}
