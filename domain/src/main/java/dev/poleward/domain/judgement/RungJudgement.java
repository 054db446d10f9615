package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.MovingOnRule;
import dev.poleward.domain.programme.RungPool;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a dog's reps say of one rung on one entry side, all its handlings together.
 *
 * @param standing how it stands
 * @param verdict what is to be done
 * @param cleanRepsToDecide how many more clean reps, the missing handlings among them, would move
 *     on; 0 when moved on
 * @param missing listed handlings that were not clean yet, in the programme's order
 * @param misfits handlings that lag the rest
 * @param slip the slip that was found and is not made good; null without one
 */
public record RungJudgement(
    RungStanding standing,
    Verdict verdict,
    int cleanRepsToDecide,
    List<Handling> missing,
    List<Misfit> misfits,
    @Nullable Slip slip) {

  /** Keeps the lists from changing. */
  public RungJudgement {
    missing = List.copyOf(missing);
    misfits = List.copyOf(misfits);
  }

  /**
   * Judges a rung.
   *
   * @param listed its handlings
   * @param watch what looks after it once it is solid
   * @param reps ascending (time, id), without void and helped ones; those with handlings that are
   *     not listed are not looked at
   */
  public static RungJudgement of(
      List<Handling> listed, MovingOnRule rule, SlipWatch watch, List<HandledRep> reps) {
    RungReading reading = new RungReading(listed, rule, Optional.of(watch));
    reps.forEach(reading::read);
    return reading.judgement();
  }

  /** Whether the test is through, so that only {@link #missing} handlings keep the dog here. */
  public boolean testPassed() {
    return switch (verdict) {
      case Verdict.MoveOn _ -> true;
      case Verdict.Hold _, Verdict.StepBack _ -> false;
      case Verdict.Undecided(Evidence evidence) -> evidence.decision() == Decision.MOVE_ON;
    };
  }

  /** The same where failing costs nothing: whoever would step back stays. */
  RungJudgement withoutSteppingBack() {
    return switch (verdict) {
      case Verdict.StepBack(Evidence evidence, int _) ->
          new RungJudgement(
              standing, new Verdict.Hold(evidence), cleanRepsToDecide, missing, misfits, slip);
      case Verdict.Hold _, Verdict.Undecided _, Verdict.MoveOn _ -> this;
    };
  }

  /** The handlings that a pool of drills lists, each once, in the stage's order. */
  public static List<Handling> handlingsOf(RungPool pool) {
    return pool.drills().stream().map(drill -> drill.handling()).distinct().toList();
  }
}
