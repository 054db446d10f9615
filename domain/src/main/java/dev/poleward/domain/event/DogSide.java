package dev.poleward.domain.event;

/** On which side of the handler the dog runs; for a rear cross, before the cross. */
public enum DogSide {
  LEFT,
  RIGHT
}
