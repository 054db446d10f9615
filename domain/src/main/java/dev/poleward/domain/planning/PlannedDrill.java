package dev.poleward.domain.planning;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.record.PlacedRep;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A drill of a plan as it was handed out.
 *
 * @param step null without a jump
 * @param turn null but for a wrap
 * @param dogSide null where either will do
 * @param reps from 1
 */
public record PlannedDrill(
    int poles,
    LeadIn leadIn,
    @Nullable BackChainStep step,
    @Nullable JumpTurn turn,
    EntryAngle angle,
    Manoeuvre manoeuvre,
    @Nullable DogSide dogSide,
    int reps) {

  /** Degrees by which a rep may lie beside what was planned: nobody lays out more exactly [C]. */
  public static final double TOLERANCE_DEGREES = 5;

  /** Whether a rep was this drill. */
  boolean isRunBy(PlacedRep rep) {
    Setup setup = rep.setup();
    EntryAngle from = rep.angle();
    return setup != null
        && from != null
        && setup.poles() == poles
        && runUp().equals(RunUp.asRun(setup.leadIn(), rep.details()))
        && Math.abs(from.degrees() - angle.degrees()) <= TOLERANCE_DEGREES
        && rep.manoeuvre() == manoeuvre
        && (dogSide == null || Objects.equals(dogSide, rep.details().dogSide()));
  }

  /** Poles alone, from where a jump will be, are run without lead-in. */
  private RunUp runUp() {
    return step == BackChainStep.POLES_ONLY
        ? new RunUp(LeadIn.NONE, null, null)
        : new RunUp(leadIn, step, turn);
  }
}
