package dev.poleward.domain.event;

/** Which way the dog wraps the jump. */
public enum JumpTurn {
  LEFT,
  RIGHT
}
