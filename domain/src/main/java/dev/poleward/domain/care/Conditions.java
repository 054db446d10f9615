package dev.poleward.domain.care;

import org.jspecify.annotations.Nullable;

/**
 * What the day is like, as far as somebody said it.
 *
 * @param temperature of the air, degrees Celsius, -40 to 60
 * @param humidity relative, percent, 0 to 100
 * @param sky whether there is sun on the dog
 * @param footing whether the ground is wet
 */
public record Conditions(
    @Nullable Double temperature,
    @Nullable Double humidity,
    @Nullable Sky sky,
    @Nullable Footing footing) {

  /** Nobody said anything. */
  public static final Conditions NOT_SAID = new Conditions(null, null, null, null);

  /** Where the dog runs. */
  public enum Sky {
    /** In full sun. */
    SUN,
    /** In shade, indoors or under clouds. */
    SHADE
  }

  /** What the dog runs on. */
  public enum Footing {
    /** It holds. */
    DRY,
    /** Paws may slip on it: dew, rain, mud. */
    WET
  }
}
