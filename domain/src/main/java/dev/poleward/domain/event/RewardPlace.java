package dev.poleward.domain.event;

/** Where along the poles. */
public enum RewardPlace {
  GAP,
  EXIT
}
