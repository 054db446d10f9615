package dev.poleward.domain.outlook;

import java.time.Duration;

/**
 * What an outlook is made with.
 *
 * @param runs simulated dogs for the first rhythm, at least 1
 * @param runsOfOthers for each other one, 1 to {@code runs}
 * @param horizon how far it looks; longer than no time
 * @param repsAheadMax of one dog, at least those of a session; where they are run sooner, it looks
 *     no further
 * @param repsMin reps that can be seen, without help, below which it cannot be told
 * @param sessionsMin sessions below which it cannot be told
 */
public record OutlookTerms(
    int runs, int runsOfOthers, Duration horizon, int repsAheadMax, int repsMin, int sessionsMin) {

  /** As the service answers: a hundred runs, fifty at other rhythms, four years [C]. */
  public static final OutlookTerms USUAL =
      new OutlookTerms(100, 50, Duration.ofDays(4 * 365), 10_000, 20, 3);

  /** Refuses what leads nowhere. */
  public OutlookTerms {
    if (runsOfOthers < 1
        || runs < runsOfOthers
        || horizon.isNegative()
        || horizon.isZero()
        || repsAheadMax < Rhythm.REPS_MAX) {
      throw new IllegalArgumentException(
          "no outlook: " + runs + " runs, " + horizon + ", " + repsAheadMax + " reps");
    }
  }

  /** How far it looks at a rhythm. */
  public Duration horizon(Rhythm rhythm) {
    Duration busy = rhythm.apart().multipliedBy(repsAheadMax / rhythm.repsPerSession());
    return busy.compareTo(horizon) < 0 ? busy : horizon;
  }
}
