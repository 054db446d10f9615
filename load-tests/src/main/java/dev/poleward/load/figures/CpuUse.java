package dev.poleward.load.figures;

import java.time.Duration;

/**
 * How many cores the service and this program kept busy: on a small machine the one that measures
 * takes from the one that is measured.
 */
public final class CpuUse {

  private final ProcessHandle service;
  private final Duration serviceBefore;
  private final Duration ownBefore;
  private final long begun = System.nanoTime();

  /** Begins to watch. */
  public CpuUse(ProcessHandle service) {
    this.service = service;
    this.serviceBefore = of(service);
    this.ownBefore = of(ProcessHandle.current());
  }

  /** Cores of the service and of this program, as {@code 1.2 + 0.4}. */
  public String cores() {
    double elapsed = System.nanoTime() - begun;
    return "%.1f + %.1f"
        .formatted(
            of(service).minus(serviceBefore).toNanos() / elapsed,
            of(ProcessHandle.current()).minus(ownBefore).toNanos() / elapsed);
  }

  private static Duration of(ProcessHandle process) {
    return process.info().totalCpuDuration().orElse(Duration.ZERO);
  }
}
