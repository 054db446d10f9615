package dev.poleward.domain.outlook;

import java.time.Duration;

/**
 * What an outlook is made with.
 *
 * @param runs simulated dogs for each rhythm, at least 1
 * @param horizon how far it looks; longer than no time
 * @param repsMin reps that can be seen, without help, below which it cannot be told
 * @param sessionsMin sessions below which it cannot be told
 */
public record OutlookTerms(int runs, Duration horizon, int repsMin, int sessionsMin) {

  /** As the service answers: a hundred runs, two years [C]. */
  public static final OutlookTerms USUAL = new OutlookTerms(100, Duration.ofDays(730), 20, 3);

  /** Refuses what leads nowhere. */
  public OutlookTerms {
    if (runs < 1 || horizon.isNegative() || horizon.isZero()) {
      throw new IllegalArgumentException("no outlook: " + runs + " runs, " + horizon);
    }
  }
}
