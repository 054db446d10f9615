package dev.poleward.domain.event;

/** What the dog got. */
public enum RewardKind {
  FOOD,
  TOY
}
