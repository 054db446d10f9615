package dev.poleward.domain.programme;

import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Told.givenTraining;

import dev.poleward.domain.history.RepTelling;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.record.PlacedRep;
import java.util.function.UnaryOperator;

/** Reps over setups as they are laid out for a drill. */
final class LaidOut {

  private LaidOut() {}

  /** A clean rep of juniper's, alongside when nothing else is said. */
  static PlacedRep run(Setup setup, UnaryOperator<RepTelling> said) {
    return givenTraining(rep("r-1", telling -> said.apply(telling.over(setup))))
        .whenAsked()
        .rep("r-1");
  }

  /** Poles at 0.6 m, what the dog comes from, and from where. */
  static Setup setup(int poles, LeadIn leadIn, double degrees) {
    Approach approach = new Approach(new EntryAngle(degrees), null);
    return new Setup(poles, 0.6, leadIn, null, approach, null, null, null);
  }

  /** A clean rep of that drill, run as many degrees beside it. */
  static PlacedRep runOf(Drill drill, double beside) {
    double degrees = drill.rung().angle().degrees() + beside;
    return run(
        setup(drill.poles(), drill.runUp().leadIn(), degrees), telling -> handled(telling, drill));
  }

  private static RepTelling handled(RepTelling telling, Drill drill) {
    telling.with(drill.handling().manoeuvre());
    if (drill.handling().dogSide() != null) {
      telling.dogSide(drill.handling().dogSide());
    }
    if (drill.runUp().step() != null) {
      telling.backChainStep(drill.runUp().step());
    }
    if (drill.runUp().turn() != null) {
      telling.jumpTurn(drill.runUp().turn());
    }
    return telling;
  }
}
