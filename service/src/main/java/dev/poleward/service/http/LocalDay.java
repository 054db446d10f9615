package dev.poleward.service.http;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** A day of a club's own calendar. */
record LocalDay(LocalDate date, ZoneId zone) {

  /** The instant at which it is over. */
  Instant end() {
    return date.plusDays(1).atStartOfDay(zone).toInstant();
  }
}
