package dev.poleward.service.page;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days as people write them. */
final class Days {

  private static final DateTimeFormatter WRITTEN =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private Days() {}

  /** {@code 4 May 2026}. */
  static String of(LocalDate day) {
    return WRITTEN.format(day);
  }
}
