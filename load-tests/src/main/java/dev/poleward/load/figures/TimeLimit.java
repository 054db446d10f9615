package dev.poleward.load.figures;

import java.time.Duration;

/** Ends a program that takes too long, and with it the processes that it started. */
public final class TimeLimit {

  private static final int EXIT_CODE = 3;

  private TimeLimit() {}

  /** Begins to count. */
  public static void set(Duration limit) {
    Thread.ofPlatform()
        .daemon()
        .name("time-limit")
        .start(
            () -> {
              try {
                Thread.sleep(limit);
              } catch (InterruptedException e) {
                return;
              }
              System.err.println("Given up: not done after " + limit.toMinutes() + " min");
              System.exit(EXIT_CODE);
            });
  }
}
