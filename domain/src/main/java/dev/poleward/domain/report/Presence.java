package dev.poleward.domain.report;

/** Whether a dog was there. */
public enum Presence {
  /** Somebody noted it, or it has reps: a dog that ran was there, whatever was noted. */
  PRESENT,
  /** It was noted to be away, and has no reps. */
  ABSENT,
  /** Nobody noted anything, and it has no reps. */
  UNKNOWN
}
