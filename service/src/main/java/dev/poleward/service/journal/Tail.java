package dev.poleward.service.journal;

import java.time.Duration;
import java.util.List;

/** A reader of the journal's records as they come. For one thread, except {@link #wakeup}. */
public interface Tail extends AutoCloseable {

  /**
   * The next records of each partition in order; empty when none came in time.
   *
   * @param wait at most this long
   * @throws JournalException when the journal cannot be read: corrupted, or out of reach for good
   */
  List<JournalRecord> poll(Duration wait);

  /** Makes a waiting poll return at once. From any thread. */
  void wakeup();

  @Override
  void close();
}
