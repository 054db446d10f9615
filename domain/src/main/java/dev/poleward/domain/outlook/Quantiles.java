package dev.poleward.domain.outlook;

import java.util.OptionalInt;

/**
 * How many sessions it takes: of ten dogs like this one, one is there by {@code early}, five by
 * {@code middle}, nine by {@code late}. Empty where that lies beyond the horizon.
 */
public record Quantiles(OptionalInt early, OptionalInt middle, OptionalInt late) {

  /**
   * Of runs.
   *
   * @param sessions of each run in ascending order, {@link Ahead#NEVER} for those that did not get
   *     there; at least one
   */
  static Quantiles of(int[] sessions) {
    return new Quantiles(at(sessions, 0.1), at(sessions, 0.5), at(sessions, 0.9));
  }

  private static OptionalInt at(int[] sessions, double share) {
    int value = sessions[Math.max(0, (int) Math.ceil(share * sessions.length) - 1)];
    return value == Ahead.NEVER ? OptionalInt.empty() : OptionalInt.of(value);
  }
}
