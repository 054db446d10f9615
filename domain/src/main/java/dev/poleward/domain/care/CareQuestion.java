package dev.poleward.domain.care;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * What a review of a dog goes by, besides the dog. Days, weeks and what is lately are counted in
 * days of the club: who trains on the same weekday would else have a class in the last seven days
 * twice, before the hour of the second.
 *
 * @param limits of the club
 * @param conditions of the day
 * @param day of the session
 * @param zone of the club's days
 */
public record CareQuestion(CareLimits limits, Conditions conditions, LocalDate day, ZoneId zone) {

  /** The instant at which the day is over. */
  public Instant end() {
    return day.plusDays(1).atStartOfDay(zone).toInstant();
  }

  /** The instant with which the last so many days begin; the day itself is one of them. */
  Instant beginOfLast(int days) {
    return day.minusDays(days - 1L).atStartOfDay(zone).toInstant();
  }
}
