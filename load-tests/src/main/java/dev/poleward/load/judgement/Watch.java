package dev.poleward.load.judgement;

/** Looks at a dog's reps one after the other and sounds when it thinks that the dog slips. */
public interface Watch {

  /** Sees one more rep; whether it sounds. */
  boolean sees(boolean clean);
}
