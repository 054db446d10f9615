package dev.poleward.domain.judgement;

/** What a test says of the reps that it has seen. */
public enum Decision {
  /** Not there yet, as far as this test can tell. */
  HOLD,
  /** Neither. */
  UNDECIDED,
  /** Mastered. For good: the test looks at nothing after that. */
  MOVE_ON
}
