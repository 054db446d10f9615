package dev.poleward.service.journal;

/**
 * How much may wait for the journal's acknowledgement at a time, over all clubs.
 *
 * @param entriesMax 1,000 to 1,000,000
 * @param bytesMax 8 MiB to 1 GiB, in bytes as they go to the broker
 */
public record QueueLimits(int entriesMax, int bytesMax) {

  /** 20,000 entries, 32 MiB. */
  public static final QueueLimits DEFAULT = new QueueLimits(20_000, 32 << 20);

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException naming the first limit out of range
   */
  public QueueLimits {
    if (entriesMax < 1_000 || entriesMax > 1_000_000) {
      throw new IllegalArgumentException(
          "entries that may wait: %d is not 1,000 to 1,000,000".formatted(entriesMax));
    }
    if (bytesMax < 8 << 20 || bytesMax > 1 << 30) {
      throw new IllegalArgumentException(
          "bytes that may wait: %d is not 8 MiB to 1 GiB".formatted(bytesMax));
    }
  }
}
