package dev.poleward.service.journal;

import java.time.Duration;

/**
 * How fast a superseded record leaves the topic of wrapped keys.
 *
 * <p>Kafka compacts closed segments only, and closes one only when something is appended after its
 * time. So each burst of records is followed by one more, written for nothing else, once {@code
 * lag} has passed; then the cleaner comes by within {@code cleanerPause}, copies what still counts,
 * and deletes the old segment {@code fileDeleteDelay} later.
 *
 * @param lag age at which a segment is closed and must be compacted, 1 s to 1 h
 * @param cleanerPause longest pause of the broker's cleaner between two looks, 100 ms to 1 min
 * @param fileDeleteDelay from taking a segment out of use to deleting its file, 0 to 1 min
 * @param slack for the work itself, on a busy machine, 1 s to 1 h
 */
public record PersonKeyTiming(
    Duration lag, Duration cleanerPause, Duration fileDeleteDelay, Duration slack) {

  /** Last copy gone within 3 minutes. */
  public static final PersonKeyTiming DEFAULT =
      new PersonKeyTiming(
          Duration.ofSeconds(60),
          Duration.ofSeconds(5),
          Duration.ofSeconds(1),
          Duration.ofSeconds(112));

  /** How late after {@code lag} the closing record is written at most, while the service runs. */
  static final Duration NUDGE_LATENESS_MAX = Duration.ofSeconds(2);

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException naming the first that is out of range
   */
  public PersonKeyTiming {
    require("lag", lag, Duration.ofSeconds(1), Duration.ofHours(1));
    require("pause of the cleaner", cleanerPause, Duration.ofMillis(100), Duration.ofMinutes(1));
    require("delay of deleting files", fileDeleteDelay, Duration.ZERO, Duration.ofMinutes(1));
    require("slack", slack, Duration.ofSeconds(1), Duration.ofHours(1));
  }

  /** Longest time from superseding a record to the deletion of the last file that holds it. */
  public Duration lastCopyGoneWithin() {
    return lag.plus(NUDGE_LATENESS_MAX).plus(cleanerPause).plus(fileDeleteDelay).plus(slack);
  }

  private static void require(String what, Duration value, Duration least, Duration most) {
    if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
      throw new IllegalArgumentException(
          "the %s is %s instead of %s to %s".formatted(what, value, least, most));
    }
  }
}
