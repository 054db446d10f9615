package dev.poleward.domain.programme;

/**
 * What comes first inside a stage. Either way both sides of a turned angle come before the next.
 */
public enum StageOrder {
  /** What the dog can be expected to do best. */
  MEASURED,
  /** As the document lists it. */
  LISTED
}
