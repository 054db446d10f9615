package dev.poleward.service.http;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** Bounds what bodies under way take of the memory. Safe for use by many threads. */
final class BodyRoom {

  /** Bytes of bodies that are read, judged and recorded at a time. */
  static final int BYTES_MAX = 24 << 20;

  private static final Duration WAIT_MAX = Duration.ofSeconds(2);

  private final Semaphore room = new Semaphore(BYTES_MAX, true);

  /**
   * Takes room for a body, and waits a little for it.
   *
   * @param bytes its length, or the most that it can be
   * @return whether there was room in time
   */
  boolean take(int bytes) {
    try {
      return room.tryAcquire(bytes, WAIT_MAX.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Gives back what was taken. */
  void giveBack(int bytes) {
    room.release(bytes);
  }
}
