package dev.poleward.domain.layout;

/**
 * Which way the last pole moves, seen by the arriving dog, when the line of poles turns about pole
 * 1.
 */
public enum LastPoleMoves {
  LEFT,
  RIGHT
}
