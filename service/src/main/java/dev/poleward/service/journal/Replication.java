package dev.poleward.service.journal;

/**
 * How many copies of a topic there are, and how many must have a record before it counts as
 * written.
 *
 * @param copies 1 to 32
 * @param inSyncMin 1 to {@code copies}
 */
public record Replication(int copies, int inSyncMin) {

  /** One broker, one copy. */
  public static final Replication SINGLE = new Replication(1, 1);

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException when a number is out of range
   */
  public Replication {
    if (copies < 1 || copies > 32 || inSyncMin < 1 || inSyncMin > copies) {
      throw new IllegalArgumentException(
          "%d copies of which %d must be in step".formatted(copies, inSyncMin));
    }
  }

  /** Three copies of which two must be in step, or as many copies as there are brokers. */
  public static Replication forBrokers(int brokers) {
    return brokers >= 3 ? new Replication(3, 2) : new Replication(Math.max(1, brokers), 1);
  }
}
