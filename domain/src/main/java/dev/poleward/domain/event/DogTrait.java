package dev.poleward.domain.event;

/** A trait of a dog that an amendment can take away again. */
public enum DogTrait {
  BORN,
  WITHERS_HEIGHT,
  HEAT_RISK,
  HANDLERS,
  GUEST
}
