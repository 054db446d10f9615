package dev.poleward.domain.layout;

/** What the dog comes from. */
public enum LeadIn {
  /** The dog starts where the handler puts it. */
  NONE,
  JUMP,
  TUNNEL
}
