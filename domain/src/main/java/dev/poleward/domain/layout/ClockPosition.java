package dev.poleward.domain.layout;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the dog comes from on a clock face centred on pole 1, seen from above, with the poles
 * running towards 6: 12:00 is straight on, an hour is 30 degrees, half hours are used.
 *
 * <p>6:00 has no entry side and is not a position.
 *
 * @param hour 1 to 12
 * @param half whether half an hour is added
 */
public record ClockPosition(int hour, boolean half) {

  /** Degrees between neighbouring positions. */
  public static final int DEGREES_PER_HALF_HOUR = 15;

  private static final int HALF_HOURS = 24;
  private static final Pattern WRITTEN = Pattern.compile("([1-9]|1[0-2]):(00|30)");

  /** Refuses hours off the face and 6:00. */
  public ClockPosition {
    if (hour < 1 || hour > 12) {
      throw new IllegalArgumentException("a clock has hours 1 to 12: " + hour);
    }
    if (hour == 6 && !half) {
      throw new IllegalArgumentException("6:00 has no entry side");
    }
  }

  /** Reads {@code "1:30"}; empty when the text is no position, {@code "6:00"} included. */
  public static Optional<ClockPosition> read(String text) {
    Matcher written = WRITTEN.matcher(text);
    if (!written.matches() || "6:00".equals(text)) {
      return Optional.empty();
    }
    return Optional.of(
        new ClockPosition(Integer.parseInt(written.group(1)), "30".equals(written.group(2))));
  }

  /** The position that many half hours after 12:00, 0 to 23, without 12 (which is 6:00). */
  static ClockPosition ofHalfHours(int halfHours) {
    int hour = halfHours / 2;
    return new ClockPosition(hour == 0 ? 12 : hour, halfHours % 2 == 1);
  }

  /** The signed entry angle of an approach from here. */
  public EntryAngle angle() {
    int halfHours = hour % 12 * 2 + (half ? 1 : 0);
    int signed = halfHours > HALF_HOURS / 2 ? halfHours - HALF_HOURS : halfHours;
    return new EntryAngle(signed * DEGREES_PER_HALF_HOUR);
  }

  /** As written in the field: {@code 12:00}, {@code 1:30}. */
  @Override
  public String toString() {
    return hour + (half ? ":30" : ":00");
  }
}
