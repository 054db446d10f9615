package dev.poleward.domain.outlook;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How often a dog trained lately, measured from its record.
 *
 * @param sessions in which it ran, within the time that is looked at
 * @param weeks that were looked at: the last {@value #WEEKS_MAX}, or since its first rep, at least
 *     {@value #WEEKS_MIN}
 * @param repsPerSession the median, void ones left out; {@link Rhythm#REPS_USUAL} without any
 */
public record OwnRhythm(int sessions, double weeks, int repsPerSession) {

  /** Weeks that are looked back. */
  public static final int WEEKS_MAX = 12;

  /** A dog that has just begun is not said to train more often than these can tell. */
  public static final int WEEKS_MIN = 2;

  /** Sessions below which a dog has no rhythm. */
  public static final int SESSIONS_MIN = 3;

  private static final double SECONDS_PER_WEEK = 7 * 86_400.0;

  /**
   * Measures it.
   *
   * @param reps of the dog, ascending by (time, id)
   * @param agedTo when what is looked back from ends; later reps are not looked at
   */
  static OwnRhythm of(List<PlacedRep> reps, Instant agedTo) {
    Instant since = agedTo.minus(Duration.ofDays(7L * WEEKS_MAX));
    Map<String, Integer> sessions = new TreeMap<>();
    Instant first = agedTo;
    for (PlacedRep rep : reps) {
      Instant time = rep.moment().time();
      first = time.isBefore(first) ? time : first;
      if (time.isAfter(since) && !time.isAfter(agedTo) && rep.outcome() != Outcome.VOID) {
        sessions.merge(rep.session(), 1, Integer::sum);
      }
    }
    double weeks = Duration.between(first, agedTo).toSeconds() / SECONDS_PER_WEEK;
    List<Integer> reached = sessions.values().stream().sorted().toList();
    int median = reached.isEmpty() ? Rhythm.REPS_USUAL : reached.get(reached.size() / 2);
    return new OwnRhythm(
        sessions.size(),
        Math.clamp(weeks, WEEKS_MIN, WEEKS_MAX),
        Math.min(median, Rhythm.REPS_MAX));
  }

  /** The rhythm; none of a dog that hardly trained. */
  public Optional<Rhythm> rhythm() {
    return sessions < SESSIONS_MIN
        ? Optional.empty()
        : Optional.of(
            new Rhythm(
                Math.clamp(sessions / weeks, Rhythm.SESSIONS_MIN, Rhythm.SESSIONS_MAX),
                repsPerSession));
  }
}
