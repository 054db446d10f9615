package dev.poleward.domain.record;

/** What an event can announce or refer to. */
public enum EntityKind {
  CLUB,
  KEY,
  GROUND,
  HANDLER,
  DOG,
  CLASS,
  PROGRAMME,
  PLAN,
  DEVICE,
  SESSION,
  REP,
  /** Another event, by its id. */
  EVENT
}
