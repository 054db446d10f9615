package dev.poleward.service.journal;

import java.time.Duration;
import java.util.List;

/**
 * Events in the order in which they were recorded, for good. Safe for use by many threads.
 *
 * <p>Entries of one club stand in one partition, in the order of their appends.
 */
public interface Journal extends AutoCloseable {

  /** Number of partitions, fixed for life: a club's partition follows from it. */
  int PARTITIONS = 12;

  /**
   * Appends entries and waits until they are durable.
   *
   * @param entries 1 to 1,000, all of one club
   * @param wait at most this long
   */
  AppendOutcome append(List<Entry> entries, Duration wait);

  /** The partition in which a club's entries stand. */
  int partitionOf(String club);

  /**
   * Ends of all partitions, as they are now: the offset that the next record of each will get.
   *
   * @param wait at most this long
   * @throws JournalException when the ends cannot be had in time
   */
  long[] ends(Duration wait);

  /**
   * Reads some partitions from given offsets on, for ever.
   *
   * @param partitions which partitions
   * @param from for every partition, by its number, the offset to begin with
   */
  Tail tail(List<Integer> partitions, long[] from);

  @Override
  void close();
}
