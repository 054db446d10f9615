package dev.poleward.service.journal;

import java.time.Duration;
import java.util.List;

/** What became of an append. */
public sealed interface AppendOutcome {

  /**
   * On disk, and on every replica that has to have it.
   *
   * @param places one for each entry, in their order
   */
  record Appended(List<Place> places) implements AppendOutcome {}

  /**
   * The queue is full; nothing was queued.
   *
   * @param retryAfter when to try again
   */
  record QueueFull(Duration retryAfter) implements AppendOutcome {}

  /**
   * Not acknowledged in time, or refused by the broker. Some or all of it may be recorded all the
   * same: to send it again is safe.
   *
   * @param why for the log and the answer; says nothing about other clubs
   * @param retryAfter when to try again
   */
  record Unavailable(String why, Duration retryAfter) implements AppendOutcome {}

  /** The disk is nearly full; nothing was queued. */
  record DiskNearlyFull(Duration retryAfter) implements AppendOutcome {}
}
