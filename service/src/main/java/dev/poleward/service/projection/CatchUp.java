package dev.poleward.service.projection;

import java.time.Duration;

/** Makes sure that this node has applied what any node has acknowledged. */
public interface CatchUp {

  /**
   * Waits until all that the club's partition held when this was called is applied here.
   *
   * @param wait at most this long
   * @return whether that came about in time
   */
  boolean catchUp(String club, Duration wait);

  /** The only node there is: it acknowledges nothing that it has not applied. */
  CatchUp SOLE_NODE = (_, _) -> true;
}
