package dev.poleward.domain.event;

/** What the handler does. */
public enum Manoeuvre {
  ALONGSIDE,
  REAR_CROSS,
  FRONT_CROSS,
  BLIND_CROSS,
  LATERAL_DISTANCE,
  RECALL,
  SEND,
  PRESSURE
}
