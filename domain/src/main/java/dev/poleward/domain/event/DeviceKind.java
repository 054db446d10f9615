package dev.poleward.domain.event;

/** What a timing device is. */
public enum DeviceKind {
  TIMER,
  WEARABLE,
  OTHER
}
