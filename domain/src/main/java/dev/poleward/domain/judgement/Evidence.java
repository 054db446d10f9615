package dev.poleward.domain.judgement;

/**
 * What a test has seen so far, and what it says of that. One more rep makes new evidence of it; a
 * clean one never makes the decision worse, a miss never better. Immutable.
 */
public sealed interface Evidence permits SequentialEvidence, WindowEvidence, RunEvidence {

  /**
   * With one more rep. After {@link Decision#MOVE_ON} as well: while something else keeps the dog
   * here, misses still count, and can take back what the test has said.
   */
  Evidence with(boolean clean);

  /** What the test says. */
  Decision decision();

  /** Clean reps that count now. */
  int clean();

  /** Missed reps that count now. */
  int missed();

  /** How many more clean reps in a row would make it {@link Decision#MOVE_ON}; 0 when it is. */
  int cleanRepsToDecide();
}
