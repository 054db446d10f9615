package dev.poleward.service.projection;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** Waiting for what other threads bring about. */
final class Until {

  private static final Duration LONGEST = Duration.ofSeconds(20);

  private Until() {}

  /** Comes back once it holds; fails when that takes too long. */
  static void holds(BooleanSupplier condition) {
    long begun = System.nanoTime();
    while (!condition.getAsBoolean()) {
      if (System.nanoTime() - begun > LONGEST.toNanos()) {
        throw new AssertionError("it did not come about within " + LONGEST.toSeconds() + " s");
      }
      LockSupport.parkNanos(200_000);
    }
  }
}
