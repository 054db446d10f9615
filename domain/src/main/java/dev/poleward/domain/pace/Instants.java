package dev.poleward.domain.pace;

import java.time.Instant;
import java.time.ZoneOffset;

/** Instants as the clocks of devices count. */
final class Instants {

  private static final double NANOS_A_MILLI = 1e6;

  private Instants() {}

  /** The day of UTC, as text. */
  static String day(Instant time) {
    return time.atOffset(ZoneOffset.UTC).toLocalDate().toString();
  }

  /** Milliseconds since 1970, with their fraction. */
  static double millis(Instant time) {
    return time.getEpochSecond() * 1_000.0 + time.getNano() / NANOS_A_MILLI;
  }
}
