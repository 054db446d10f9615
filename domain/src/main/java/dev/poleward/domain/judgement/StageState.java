package dev.poleward.domain.judgement;

/** How a stage stands with a dog. */
public enum StageState {
  /** A stage before it is not done. */
  LOCKED,
  /** Has its turn. */
  OPEN,
  /** Everything in it was moved on from once, or the dog was said to start behind it. */
  DONE
}
