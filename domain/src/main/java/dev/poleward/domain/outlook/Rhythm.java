package dev.poleward.domain.outlook;

import java.time.Duration;

/**
 * How often and how much a dog trains: sessions evenly apart, reps of one a minute apart.
 *
 * @param sessionsPerWeek {@value #SESSIONS_MIN} to {@value #SESSIONS_MAX}
 * @param repsPerSession 1 to {@value #REPS_MAX}
 */
public record Rhythm(double sessionsPerWeek, int repsPerSession) {

  /** Fewest sessions a week that are looked ahead with. */
  public static final double SESSIONS_MIN = 0.25;

  /** Most sessions a week that are looked ahead with. */
  public static final double SESSIONS_MAX = 7;

  /** Most reps of a session that are looked ahead with. */
  public static final int REPS_MAX = 40;

  /** Reps of a session where a record does not tell [C]. */
  public static final int REPS_USUAL = 10;

  private static final double SECONDS_PER_WEEK = 7 * 86_400.0;

  /** Refuses what no dog trains. */
  public Rhythm {
    if (!(sessionsPerWeek >= SESSIONS_MIN && sessionsPerWeek <= SESSIONS_MAX)
        || repsPerSession < 1
        || repsPerSession > REPS_MAX) {
      throw new IllegalArgumentException(
          "no rhythm: " + sessionsPerWeek + " a week, " + repsPerSession + " reps");
    }
  }

  /** Time from one session to the next. */
  Duration apart() {
    return Duration.ofSeconds((long) (SECONDS_PER_WEEK / sessionsPerWeek));
  }

  /** Weeks until so many sessions are over, the first a whole interval from now. */
  public double weeks(int sessions) {
    return sessions / sessionsPerWeek;
  }
}
