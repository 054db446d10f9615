package dev.poleward.service.projection;

import dev.poleward.service.journal.Place;
import java.time.Duration;
import java.util.List;

/** What has been applied, and waiting for it. Safe for use by many threads. */
public interface Applied {

  /**
   * Waits until this node has applied all these places.
   *
   * @param wait at most this long
   * @return whether that came about in time
   */
  boolean await(List<Place> places, Duration wait);

  /** What an applied record did. */
  enum Effect {
    /** It was the first of its id. */
    RECORDED,
    /** The same was there already. */
    REPEATED,
    /** Other content was there already under its id. */
    CONTRADICTED
  }

  /**
   * What the record of an event at that place did, once it is applied.
   *
   * @param contentHash hash of its content, as {@link ContentHash} makes it
   */
  Effect effect(String club, String eventId, Place place, byte[] contentHash);
}
