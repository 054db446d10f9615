package dev.poleward.domain.record;

import java.time.Instant;

/**
 * When an event happened, with its id to tell apart what happened at the same instant. All ties are
 * broken in this order.
 */
public record Moment(Instant time, String id) implements Comparable<Moment> {

  @Override
  public int compareTo(Moment other) {
    int byTime = time.compareTo(other.time);
    return byTime != 0 ? byTime : id.compareTo(other.id);
  }
}
