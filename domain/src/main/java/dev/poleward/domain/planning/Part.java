package dev.poleward.domain.planning;

/** A rung's part of a session. */
record Part(Work work, int reps) {

  /** Expected share from which a rung is tested rather than come nearer to [C]. */
  static final double READY = 0.8;

  /** Whether it is run as it is, and the dog may pass. */
  boolean isTest() {
    return work.expected() >= READY;
  }
}
