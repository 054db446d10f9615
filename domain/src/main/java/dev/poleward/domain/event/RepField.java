package dev.poleward.domain.event;

/** A member of a rep that an amendment can take away again. */
public enum RepField {
  DOG_SIDE,
  BACK_CHAIN_STEP,
  JUMP_TURN,
  LATERAL_DISTANCE,
  HANDLER_AT,
  CROSS_AT,
  /** Angle and clock position are two ways to say one thing: clearing either clears both. */
  ANGLE,
  CLOCK,
  SETUP,
  POLE_SET,
  AT_POLE,
  REWARDS,
  HELP,
  HANDLER,
  OBSERVER,
  DRIVE,
  STRIDE,
  NOTE
}
