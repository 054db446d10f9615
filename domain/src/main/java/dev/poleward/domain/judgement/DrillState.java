package dev.poleward.domain.judgement;

/** How a drill stands with a dog. */
public enum DrillState {
  /** Not a rep without help. */
  UNTOUCHED,
  /** Being learned. */
  LEARNING,
  /** Moved on from, and as good as ever. */
  SOLID,
  /** Was solid; the watch found more misses than it should have. */
  SLIPPING,
  /** Solid, but not practised for so long that it may have been forgotten. */
  DUE
}
