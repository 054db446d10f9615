package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.jspecify.annotations.Nullable;

/** Times in headers. The usual layout is read by hand: a rebuild reads two for every record. */
final class Rfc3339 {

  private static final int FRACTION_AT = 19;
  private static final int NANO_DIGITS = 9;

  private Rfc3339() {}

  static byte[] bytes(OffsetDateTime time) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time).getBytes(UTF_8);
  }

  /**
   * Reads a time and keeps its offset.
   *
   * @throws DateTimeException when it is none
   */
  static OffsetDateTime parse(byte[] text) {
    if (text.length <= FRACTION_AT
        || text[4] != '-'
        || text[7] != '-'
        || text[10] != 'T'
        || text[13] != ':'
        || text[16] != ':') {
      return parseSlowly(text);
    }
    int at = FRACTION_AT;
    int nanos = 0;
    if (text[at] == '.') {
      int digits = 0;
      at++;
      while (at < text.length && digits < NANO_DIGITS && isDigit(text[at])) {
        nanos = nanos * 10 + (text[at] - '0');
        at++;
        digits++;
      }
      if (digits == 0) {
        return parseSlowly(text);
      }
      for (; digits < NANO_DIGITS; digits++) {
        nanos *= 10;
      }
    }
    var offset = offset(text, at);
    int year = number(text, 0, 4);
    int month = number(text, 5, 2);
    int day = number(text, 8, 2);
    int hour = number(text, 11, 2);
    int minute = number(text, 14, 2);
    int second = number(text, 17, 2);
    if (offset == null || (year | month | day | hour | minute | second) < 0) {
      return parseSlowly(text);
    }
    return OffsetDateTime.of(year, month, day, hour, minute, second, nanos, offset);
  }

  private static @Nullable ZoneOffset offset(byte[] text, int at) {
    int left = text.length - at;
    if (left == 1 && text[at] == 'Z') {
      return ZoneOffset.UTC;
    }
    if (left != 6 || text[at + 3] != ':') {
      return null;
    }
    int hours = number(text, at + 1, 2);
    int minutes = number(text, at + 4, 2);
    if (hours < 0 || minutes < 0) {
      return null;
    }
    return switch (text[at]) {
      case '+' -> ZoneOffset.ofHoursMinutes(hours, minutes);
      case '-' -> ZoneOffset.ofHoursMinutes(-hours, -minutes);
      default -> null;
    };
  }

  /** A number of some digits, or -1 when there is something else among them. */
  private static int number(byte[] text, int from, int digits) {
    int number = 0;
    for (int at = from; at < from + digits; at++) {
      if (!isDigit(text[at])) {
        return -1;
      }
      number = number * 10 + (text[at] - '0');
    }
    return number;
  }

  private static boolean isDigit(byte character) {
    return character >= '0' && character <= '9';
  }

  private static OffsetDateTime parseSlowly(byte[] text) {
    return OffsetDateTime.parse(new String(text, UTF_8));
  }
}
