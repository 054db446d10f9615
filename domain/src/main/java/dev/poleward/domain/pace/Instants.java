package dev.poleward.domain.pace;

import java.time.Instant;

/** Instants as the clocks of devices count. */
final class Instants {

  private static final double NANOS_A_MILLI = 1e6;

  private Instants() {}

  /** Milliseconds since 1970, with their fraction. */
  static double millis(Instant time) {
    return time.getEpochSecond() * 1_000.0 + time.getNano() / NANOS_A_MILLI;
  }
}
