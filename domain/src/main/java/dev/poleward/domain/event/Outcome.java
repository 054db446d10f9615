package dev.poleward.domain.event;

/** How a rep ended. */
public enum Outcome {
  CLEAN,
  MISSED_ENTRY,
  SKIPPED_POLE,
  POPPED_OUT,
  NO_ATTEMPT,
  BACK_WEAVE,
  /** Not the dog's fault, a handler's error or a fallen pole: outside all statistics. */
  VOID
}
