package dev.poleward.service.contract;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/**
 * Reads times that keep to the contract's pattern, whose members stand at fixed places. A tenth of
 * the cost of the library's parser, which knows many forms.
 */
final class TimeText {

  private static final int NANO_DIGITS = 9;
  private static final int FRACTION = 20;
  private static final int OFFSET_LENGTH = 6;

  private TimeText() {}

  /**
   * Reads a time.
   *
   * @param text of the contract's pattern
   * @throws DateTimeException when there is no such day, hour or minute
   */
  static OffsetDateTime read(String text) {
    boolean utc = Character.toUpperCase(text.charAt(text.length() - 1)) == 'Z';
    int end = text.length() - (utc ? 1 : OFFSET_LENGTH);
    return OffsetDateTime.of(
        number(text, 0, 4),
        number(text, 5, 7),
        number(text, 8, 10),
        number(text, 11, 13),
        number(text, 14, 16),
        number(text, 17, 19),
        nanos(text, end),
        utc ? ZoneOffset.UTC : offset(text, end));
  }

  private static int nanos(String text, int end) {
    int nanos = end > FRACTION ? number(text, FRACTION, end) : 0;
    for (int digits = Math.max(0, end - FRACTION); digits < NANO_DIGITS; digits++) {
      nanos *= 10;
    }
    return nanos;
  }

  private static ZoneOffset offset(String text, int at) {
    int sign = text.charAt(at) == '-' ? -1 : 1;
    return ZoneOffset.ofHoursMinutes(
        sign * number(text, at + 1, at + 3), sign * number(text, at + 4, at + 6));
  }

  private static int number(String text, int from, int to) {
    return Integer.parseInt(text, from, to, 10);
  }
}
