package dev.poleward.domain.care;

import dev.poleward.domain.pace.TimedRep;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;

/**
 * What a dog did, as far as care looks at it.
 *
 * @param reps ascending by (time, id)
 * @param timed those with a time, ascending likewise; at least of the time that {@link
 *     dev.poleward.domain.pace.Slowing} looks at
 * @param slips when each slip began that still stands
 */
public record Trained(List<PlacedRep> reps, List<TimedRep> timed, List<Instant> slips) {

  /** Nothing is looked at. */
  public static final Trained NOTHING = new Trained(List.of(), List.of(), List.of());
}
