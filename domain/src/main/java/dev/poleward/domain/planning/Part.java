package dev.poleward.domain.planning;

/** A rung's part of a session. */
record Part(Work work, int reps) {}
