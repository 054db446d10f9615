package dev.poleward.domain.event;

/** How it got there. */
public enum RewardDelivery {
  HAND,
  THROWN,
  PLACED
}
