package dev.poleward.domain.care;

import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.HeatRisk;

/**
 * How warm a day is for a dog. No single cut-off exists: the air is put together with its humidity,
 * because a dog cools by panting, and degrees are added for sun and for what makes heat harder on
 * this dog. The index was made for people; what is added is common practice [C].
 */
public final class Heat {

  /** Where nobody said the humidity, percent [C]. */
  private static final double HUMIDITY_USUAL = 50;

  /** Half of the most that the Weather Service says full sun adds, degrees Celsius [C]. */
  private static final double SUN = 4;

  private static final double RAISED_RISK = 3;
  private static final double HIGH_RISK = 6;
  private static final double LARGE = 2;

  /** From so many metres at the withers a dog is large [C]. */
  private static final double LARGE_FROM_METRES = 0.6;

  private Heat() {}

  /** Degrees Celsius as they are for this dog; the temperature has to be known. */
  static double forDog(double temperature, Conditions conditions, DogTraits dog) {
    double humidity = conditions.humidity() == null ? HUMIDITY_USUAL : conditions.humidity();
    double degrees = index(temperature, humidity);
    degrees += conditions.sky() == Conditions.Sky.SUN ? SUN : 0;
    degrees += dog.heatRisk() == null ? 0 : risk(dog.heatRisk());
    Double height = dog.withersHeight();
    return degrees + (height != null && height >= LARGE_FROM_METRES ? LARGE : 0);
  }

  private static double risk(HeatRisk risk) {
    return switch (risk) {
      case NONE -> 0;
      case RAISED -> RAISED_RISK;
      case HIGH -> HIGH_RISK;
    };
  }

  /**
   * The heat index in the shade: Rothfusz 1990, US National Weather Service Technical Attachment SR
   * 90-23, with the adjustments that the Weather Prediction Center gives.
   *
   * @param temperature degrees Celsius
   * @param humidity relative, percent
   * @return degrees Celsius
   */
  public static double index(double temperature, double humidity) {
    double t = temperature * 9 / 5 + 32;
    double r = humidity;
    double simple = 0.5 * (t + 61 + (t - 68) * 1.2 + r * 0.094);
    double index = (simple + t) / 2;
    if (index >= 80) {
      index =
          -42.379
              + 2.04901523 * t
              + 10.14333127 * r
              - 0.22475541 * t * r
              - 6.83783e-3 * t * t
              - 5.481717e-2 * r * r
              + 1.22874e-3 * t * t * r
              + 8.5282e-4 * t * r * r
              - 1.99e-6 * t * t * r * r;
      if (r < 13 && t >= 80 && t <= 112) {
        index -= (13 - r) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
      } else if (r > 85 && t >= 80 && t <= 87) {
        index += (r - 85) / 10 * ((87 - t) / 5);
      }
    }
    return (index - 32) * 5 / 9;
  }
}
