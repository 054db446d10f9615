package dev.poleward.domain.record;

import java.time.Duration;
import java.util.List;

/**
 * Two reps that may be one run, logged by two phones under an id of each.
 *
 * @param second the later one in (time, id) order: what a withdrawal would take away
 * @param differs what the two do not say alike, also where one of them says nothing
 */
public record SuspectedDuplicate(PlacedRep first, PlacedRep second, List<RepAspect> differs) {

  /** How long after the first the second is said to have been run; zero or more. */
  public Duration apart() {
    return Duration.between(first.moment().time(), second.moment().time());
  }
}
