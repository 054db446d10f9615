package dev.poleward.domain.care;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * What a review of a dog goes by, besides the dog.
 *
 * @param limits of the club
 * @param conditions of the day
 * @param at when the session is to be
 * @param zone of the club's days
 */
public record CareQuestion(CareLimits limits, Conditions conditions, Instant at, ZoneId zone) {

  /** The club's day of it. */
  public LocalDate day() {
    return at.atZone(zone).toLocalDate();
  }

  /** When the day began. */
  Instant dawn() {
    return day().atStartOfDay(zone).toInstant();
  }
}
