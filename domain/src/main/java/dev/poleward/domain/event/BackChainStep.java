package dev.poleward.domain.event;

/** How far the jump has been added backwards. */
public enum BackChainStep {
  POLES_ONLY,
  WRAP,
  STRAIGHT
}
