package dev.poleward.domain.layout;

/**
 * What the dog meets first on its way to the entry between poles 1 and 2.
 *
 * <p>The two are different skills and are never pooled or mirrored.
 */
public enum EntrySide {
  /** The dog meets pole 1 first and has to go round it: an approach from the left of the line. */
  POLE,
  /** The dog meets the gap first: an approach from the right of the line. */
  GAP,
  /** Straight on: such a rep counts on either side. */
  BOTH
}
