package dev.poleward.service.projection;

import java.time.Duration;

/** Opens readings of one club at a time. Safe for use by many threads. */
public interface ClubReader {

  /**
   * Waits until this node has applied all that the club's partition held when this was called.
   *
   * @param wait at most this long
   * @return whether that came about in time
   */
  boolean catchUp(String club, Duration wait);

  /** What is applied of a club now; a club that nobody has registered reads as an empty one. */
  Reading open(String club);
}
