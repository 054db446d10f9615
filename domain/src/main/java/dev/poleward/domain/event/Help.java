package dev.poleward.domain.event;

/** What the dog was helped with. */
public enum Help {
  NONE,
  LURE,
  GUIDE,
  CUE
}
