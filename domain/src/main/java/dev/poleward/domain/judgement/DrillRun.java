package dev.poleward.domain.judgement;

import static java.util.Comparator.comparing;
import static java.util.Comparator.naturalOrder;
import static java.util.Comparator.nullsFirst;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.record.PlacedRep;
import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A drill as it was run: what stood, where the dog came from, and how it was handled. Two reps were
 * the same drill when all of this is the same. Distances, spacing and aids are not looked at.
 *
 * @param poles how many, 2 to 24
 * @param step null without a jump
 * @param turn which way the jump was wrapped; null but for a wrap, and for one that does not say it
 * @param dogSide null when it was not said
 */
public record DrillRun(
    int poles,
    LeadIn leadIn,
    @Nullable BackChainStep step,
    @Nullable JumpTurn turn,
    EntryAngle angle,
    Manoeuvre manoeuvre,
    @Nullable DogSide dogSide)
    implements Comparable<DrillRun> {

  private static final Comparator<DrillRun> ORDER =
      comparing(DrillRun::poles)
          .thenComparing(DrillRun::leadIn)
          .thenComparing(DrillRun::step, nullsFirst(naturalOrder()))
          .thenComparing(DrillRun::turn, nullsFirst(naturalOrder()))
          .thenComparing(drill -> drill.angle().degrees())
          .thenComparing(DrillRun::manoeuvre)
          .thenComparing(DrillRun::dogSide, nullsFirst(naturalOrder()));

  /** The drill that a rep was; none when nobody knows what stood or where the dog came from. */
  static Optional<DrillRun> of(PlacedRep rep) {
    Setup setup = rep.setup();
    EntryAngle angle = rep.angle();
    if (setup == null || angle == null) {
      return Optional.empty();
    }
    RunUp runUp = RunUp.asRun(setup.leadIn(), rep.details());
    return Optional.of(
        runUp == null
            ? of(rep, setup, angle, LeadIn.JUMP, BackChainStep.WRAP, null)
            : of(rep, setup, angle, runUp.leadIn(), runUp.step(), runUp.turn()));
  }

  private static DrillRun of(
      PlacedRep rep,
      Setup setup,
      EntryAngle angle,
      LeadIn leadIn,
      @Nullable BackChainStep step,
      @Nullable JumpTurn turn) {
    return new DrillRun(
        setup.poles(), leadIn, step, turn, angle, rep.manoeuvre(), rep.details().dogSide());
  }

  @Override
  public int compareTo(DrillRun other) {
    return ORDER.compare(this, other);
  }
}
