package dev.poleward.domain.event;

/** Where the handler crosses. */
public enum CrossAt {
  ENTRY,
  EXIT
}
