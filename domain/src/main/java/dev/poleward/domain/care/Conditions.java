package dev.poleward.domain.care;

import org.jspecify.annotations.Nullable;

/**
 * What the day is like, as far as somebody said it.
 *
 * @param temperature of the air, degrees Celsius, -40 to 60
 * @param humidity relative, percent, 0 to 100
 */
public record Conditions(
    @Nullable Double temperature, @Nullable Double humidity, @Nullable Sky sky) {

  /** Nobody said anything. */
  public static final Conditions NOT_SAID = new Conditions(null, null, null);

  /** Where the dog runs. */
  public enum Sky {
    /** In full sun. */
    SUN,
    /** In shade, indoors or under clouds. */
    SHADE
  }
}
