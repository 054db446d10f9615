package dev.poleward.domain.judgement;

/** What to do about rewards. */
public enum FadeAdvice {
  /** Go one step down the ladder: it holds here. */
  FADE,
  /** Stay: fewer reps than it takes to tell, or not clean often enough to ask for more. */
  HOLD,
  /** Go one step up again: it does not hold here. */
  RAISE
}
