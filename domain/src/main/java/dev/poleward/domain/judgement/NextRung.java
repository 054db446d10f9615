package dev.poleward.domain.judgement;

/**
 * Something that is to be worked on next.
 *
 * @param why what for
 * @param expected share of clean reps to be expected over its drills, 0 to 1
 */
public record NextRung(PoolStanding standing, Reason why, double expected) {

  /** Why it has its turn. */
  public enum Reason {
    /** It was solid and is no more. */
    SLIPPING,
    /** It is solid, and was left alone for too long. */
    DUE,
    /** Too many misses in a row on something harder: this is easier, and was solid. */
    EASIER,
    /** What is to be learned now. */
    FRONTIER,
    /** A look ahead, which may fail. */
    PROBE
  }
}
