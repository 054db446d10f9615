package dev.poleward.domain.judgement;

/** How a rung stands with a dog. */
public enum RungStanding {
  /** Not a rep. */
  UNTOUCHED,
  /** Being learned. */
  LEARNING,
  /** Moved on from, and no slip found since. */
  SOLID,
  /** Was solid; a slip was found, and the test has not said again that it is mastered. */
  SLIPPING
}
