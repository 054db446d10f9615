package dev.poleward.service.journal;

import java.time.Duration;
import java.util.ArrayDeque;

/**
 * When to write one more record into the topic of wrapped keys, only so that Kafka closes the
 * segment before it and can compact it. For one thread.
 *
 * <p>A record's segment is closed once one is appended that is more than {@code lag} younger. Ages
 * are told by the broker's clock, which stamped both records; when to write is told by ours, from
 * the moment when the record came here. So the two clocks need not agree.
 */
final class RollNudges {

  private static final Duration MARGIN = Duration.ofMillis(500);
  private static final Duration AGAIN = Duration.ofSeconds(1);
  private static final long TOGETHER_MILLIS = 1_000;

  /**
   * Records of one second whose segment may still be open.
   *
   * @param stampMillis the youngest's, by the broker
   * @param dueNanos when to write, by us
   */
  private record Waiting(long stampMillis, long dueNanos) {}

  private final ArrayDeque<Waiting> waiting = new ArrayDeque<>();
  private final long lagMillis;

  RollNudges(Duration lag) {
    lagMillis = lag.toMillis();
  }

  /**
   * Takes note of a record.
   *
   * @param isNudge whether it was written for this purpose, and may stay in an open segment
   */
  void seen(long stampMillis, boolean isNudge, long nowNanos) {
    while (!waiting.isEmpty() && stampMillis > waiting.getFirst().stampMillis + lagMillis) {
      waiting.removeFirst();
    }
    if (isNudge) {
      return;
    }
    var last = waiting.peekLast();
    if (last != null && last.stampMillis / TOGETHER_MILLIS == stampMillis / TOGETHER_MILLIS) {
      waiting.removeLast();
    }
    long dueNanos = nowNanos + Duration.ofMillis(lagMillis).plus(MARGIN).toNanos();
    waiting.addLast(new Waiting(stampMillis, dueNanos));
  }

  /** Makes the first nudge due at once: what was found at the start may be old enough. */
  void hurry(long nowNanos) {
    var first = waiting.pollFirst();
    if (first != null) {
      waiting.addFirst(new Waiting(first.stampMillis, nowNanos));
    }
  }

  /** Whether to write now. Asks for it again a second later, until the record has been seen. */
  boolean isDue(long nowNanos) {
    var first = waiting.peekFirst();
    if (first == null || nowNanos - first.dueNanos < 0) {
      return false;
    }
    waiting.removeFirst();
    waiting.addFirst(new Waiting(first.stampMillis, nowNanos + AGAIN.toNanos()));
    return true;
  }
}
