package dev.poleward.domain.care;

/** What may mean that something hurts; it never says what. */
public enum Sign {
  /** It hops where it used to stride. */
  HOPPING,
  /** It is less keen than it was. */
  LESS_KEEN,
  /** It takes longer than it did. */
  SLOWING,
  /** Rungs slip that were solid, several at once. */
  SLIPPING
}
