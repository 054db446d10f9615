package dev.poleward.domain.record;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * Days of a club's own calendar, both ends included.
 *
 * @param from not after {@code to}
 * @param to at most {@value #DAYS_MAX} days from {@code from}
 */
public record DaySpan(LocalDate from, LocalDate to, ZoneId zone) {

  /** Days of a span at most: a year and what it takes to compare with the last. */
  public static final int DAYS_MAX = 400;

  /** Refuses what is no span. */
  public DaySpan {
    if (from.isAfter(to) || from.plusDays(DAYS_MAX).isBefore(to)) {
      throw new IllegalArgumentException("no span of days: " + from + " to " + to);
    }
  }

  /** The instant with which it begins. */
  public Instant begin() {
    return from.atStartOfDay(zone).toInstant();
  }

  /** The instant at which it is over. */
  public Instant end() {
    return to.plusDays(1).atStartOfDay(zone).toInstant();
  }

  /** The last instant of it. */
  public Instant last() {
    return end().minusNanos(1);
  }

  /** Whether something happened in it. */
  public boolean has(Instant time) {
    return !time.isBefore(begin()) && time.isBefore(end());
  }

  /** The club's day of an instant. */
  public LocalDate day(Instant time) {
    return time.atZone(zone).toLocalDate();
  }
}
