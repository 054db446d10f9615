package dev.poleward.domain.event;

/** How the dog moved between the poles. */
public enum Stride {
  SINGLE,
  DOUBLE,
  HOP
}
