package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.MovingOnRule;

/** A test of reps, each clean or missed, that decides whether something is mastered. */
public sealed interface MovingOnTest permits SequentialTest, KOfN, RunOfClean {

  /** Before the first rep. */
  Evidence begun();

  /** The test that a programme's rule asks for. */
  static MovingOnTest of(MovingOnRule rule) {
    return switch (rule) {
      case MovingOnRule.Sequential it ->
          new SequentialTest(it.mastered(), it.notYet(), it.wrongMoveOn(), it.wrongHold());
      case MovingOnRule.KOfN it -> new KOfN(it.k(), it.n());
      case MovingOnRule.Run it -> new RunOfClean(it.length());
    };
  }
}
