package dev.poleward.domain.programme;

/** What a stage is to its programme. */
public enum StageKind {
  /** Has its turn after its prerequisites. */
  REGULAR,
  /** May be tried before its turn; failing costs nothing. */
  PROBE
}
