package dev.poleward.domain.outlook;

import java.time.Duration;

/**
 * What an outlook is made with.
 *
 * @param runs simulated dogs for the first rhythm, at least 1
 * @param runsOfOthers for each other one, 1 to {@code runs}
 * @param horizon how far it looks; longer than no time
 * @param repsMin reps that can be seen, without help, below which it cannot be told
 * @param sessionsMin sessions below which it cannot be told
 */
public record OutlookTerms(
    int runs, int runsOfOthers, Duration horizon, int repsMin, int sessionsMin) {

  /** As the service answers: a hundred runs, fifty at other rhythms, two years [C]. */
  public static final OutlookTerms USUAL = new OutlookTerms(100, 50, Duration.ofDays(730), 20, 3);

  /** Refuses what leads nowhere. */
  public OutlookTerms {
    if (runsOfOthers < 1 || runs < runsOfOthers || horizon.isNegative() || horizon.isZero()) {
      throw new IllegalArgumentException("no outlook: " + runs + " runs, " + horizon);
    }
  }
}
