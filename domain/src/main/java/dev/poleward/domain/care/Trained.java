package dev.poleward.domain.care;

import dev.poleward.domain.pace.ClubTimings;
import dev.poleward.domain.pace.Slowing;
import dev.poleward.domain.pace.TimedRep;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import java.time.Instant;
import java.util.List;

/**
 * What a dog did, as far as care looks at it.
 *
 * @param reps ascending by (time, id)
 * @param timed those with a time, ascending likewise; at least of the time that {@link Slowing}
 *     looks at
 * @param slips when each slip began that still stands
 */
public record Trained(List<PlacedRep> reps, List<TimedRep> timed, List<Instant> slips) {

  /** Nothing is looked at. */
  public static final Trained NOTHING = new Trained(List.of(), List.of(), List.of());

  /**
   * What a dog did, with the times of as long before as tells whether it slows.
   *
   * @param dog its id after merges
   * @param end of the day on which it is looked at
   */
  public static Trained of(
      String dog, List<PlacedRep> reps, Placement placement, List<Instant> slips, Instant end) {
    return of(dog, reps, timings(placement, end), slips);
  }

  /** The same, where several dogs are looked at: {@code timings} are read once for all. */
  public static Trained of(
      String dog, List<PlacedRep> reps, ClubTimings timings, List<Instant> slips) {
    return new Trained(reps, timings.ofDog(dog, reps).reps(), slips);
  }

  /**
   * Timings of as long before as tells whether a dog slows.
   *
   * @param end of the day on which dogs are looked at
   */
  public static ClubTimings timings(Placement placement, Instant end) {
    return new ClubTimings(placement, end.minus(Slowing.SPAN), end);
  }
}
