package dev.poleward.domain.judgement;

/** What a test says of the reps that it has seen. */
public enum Decision {
  /** Not there yet, as far as this test can tell. */
  HOLD,
  /** Neither. */
  UNDECIDED,
  /** Mastered, as of the last rep. */
  MOVE_ON
}
