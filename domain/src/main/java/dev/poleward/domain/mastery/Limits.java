package dev.poleward.domain.mastery;

import org.jspecify.annotations.Nullable;

/**
 * Limits of a place, 95%.
 *
 * @param lower null when there is none
 * @param upper null when there is none
 */
record Limits(@Nullable Double lower, @Nullable Double upper) {

  /** Neither. */
  static final Limits NONE = new Limits(null, null);

  /** Those of them that lie in {@code range}; the others are none. */
  Limits within(Range range) {
    return new Limits(
        lower != null && range.holds(lower) ? lower : null,
        upper != null && range.holds(upper) ? upper : null);
  }
}
