package dev.poleward.domain.care;

/** How much a note matters, from the least. */
public enum Severity {
  /** Worth knowing. */
  NOTE,
  /** To be minded. */
  CAUTION,
  /** Not today. */
  STOP
}
