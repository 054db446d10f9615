package dev.poleward.domain.care;

import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What a span of days asked of a dog's body, against the limits that hold for it.
 *
 * @param sessions in which it ran within the span, in the order of their first reps
 * @param weeks the seven days that end with each day of the span on which it ran, ascending
 */
public record LoadReview(List<OfSession> sessions, List<OfWeek> weeks) {

  /** Keeps the lists from changing. */
  public LoadReview {
    sessions = List.copyOf(sessions);
    weeks = List.copyOf(weeks);
  }

  /**
   * What a session asked.
   *
   * @param day the club's day of its first rep
   * @param load as far as it lies within the span
   * @param limits of that day
   */
  public record OfSession(String session, LocalDate day, Load load, DogLimits limits) {

    /** Whether more was asked than the club allows. */
    public boolean isOver() {
      return load.gaps() > limits.gapsPerSession()
          || load.sharpBends() > limits.sharpBendsPerSession();
    }
  }

  /**
   * What seven days asked.
   *
   * @param last the last of them
   * @param load of all seven, those before the span too: a body does not begin with a report
   * @param limits of the last day
   */
  public record OfWeek(LocalDate last, Load load, DogLimits limits) {

    /** Whether more was asked than the club allows. */
    public boolean isOver() {
      return load.gaps() > limits.gapsPerWeek();
    }
  }

  /**
   * Looks at a dog.
   *
   * @param reps of the dog, ascending by (time, id)
   * @param club its limits
   */
  public static LoadReview of(DogRecord dog, List<PlacedRep> reps, CareLimits club, DaySpan span) {
    Map<String, List<PlacedRep>> bySession = new LinkedHashMap<>();
    TreeSet<LocalDate> days = new TreeSet<>();
    for (PlacedRep rep : reps) {
      Instant time = rep.moment().time();
      if (span.has(time)) {
        bySession.computeIfAbsent(rep.session(), _ -> new ArrayList<>()).add(rep);
        days.add(span.day(time));
      }
    }
    List<OfSession> sessions = new ArrayList<>();
    bySession.forEach(
        (session, run) -> {
          LocalDate day = span.day(run.getFirst().moment().time());
          sessions.add(
              new OfSession(
                  session,
                  day,
                  Load.of(run, span.begin(), span.end()),
                  DogLimits.of(dog, club, day)));
        });
    return new LoadReview(
        sessions,
        days.stream()
            .map(day -> new OfWeek(day, week(reps, day, span), DogLimits.of(dog, club, day)))
            .toList());
  }

  private static Load week(List<PlacedRep> reps, LocalDate last, DaySpan span) {
    return Load.of(
        reps,
        last.minusDays(LoadSeen.WEEK - 1).atStartOfDay(span.zone()).toInstant(),
        last.plusDays(1).atStartOfDay(span.zone()).toInstant());
  }

  /** The first of the sessions with the most gaps; empty when it did not run. */
  public Optional<OfSession> mostGaps() {
    return sessions.stream().reduce((one, other) -> more(one.load, other.load) ? other : one);
  }

  private static boolean more(Load one, Load other) {
    return other.gaps() > one.gaps();
  }

  /** Most sharp bends in a session. */
  public int mostSharpBends() {
    return sessions.stream().mapToInt(each -> each.load().sharpBends()).max().orElse(0);
  }

  /** The first of the weeks with the most gaps; empty when it did not run. */
  public Optional<OfWeek> heaviestWeek() {
    return weeks.stream()
        .max(
            Comparator.<OfWeek>comparingInt(week -> week.load().gaps())
                .thenComparing(OfWeek::last, Comparator.reverseOrder()));
  }

  /** Sessions in which more was asked than the club allows. */
  public int sessionsOver() {
    return (int) sessions.stream().filter(OfSession::isOver).count();
  }

  /** Days on which the seven up to them asked more than the club allows. */
  public int weeksOver() {
    return (int) weeks.stream().filter(OfWeek::isOver).count();
  }
}
