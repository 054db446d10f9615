package dev.poleward.service.http;

import dev.poleward.domain.record.Moment;
import dev.poleward.service.codec.Ids;
import java.time.DateTimeException;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Cursors of lists, which go by (time, id) or by id. */
final class Cursors {

  // A day beyond the times that events can have, offsets included.
  private static final Instant EARLIEST = Instant.parse("1899-12-30T00:00:00Z");
  private static final Instant LATEST = Instant.parse("2200-01-02T00:00:00Z");

  private Cursors() {}

  static String written(Moment moment) {
    return moment.time() + " " + moment.id();
  }

  /** The moment in the cursor; null at the beginning, and when the cursor is none of ours. */
  static @Nullable Moment moment(Parameters parameters) {
    String cursor = parameters.cursor();
    if (cursor == null) {
      return null;
    }
    Moment moment = moment(cursor);
    if (moment == null) {
      parameters.refuseCursor();
    }
    return moment;
  }

  /** The moment that was {@link #written(Moment)}; null when it is none of ours. */
  static @Nullable Moment moment(String cursor) {
    int space = cursor.indexOf(' ');
    try {
      Instant time = Instant.parse(cursor.substring(0, Math.max(0, space)));
      String id = cursor.substring(space + 1);
      if (time.isAfter(EARLIEST) && time.isBefore(LATEST) && Ids.isRecordedId(id)) {
        return new Moment(time, id);
      }
    } catch (DateTimeException e) {
      // Falls through to the refusal: what is no time and what is none of ours are alike.
    }
    return null;
  }

  /** The id in the cursor; empty at the beginning, and when the cursor is none of ours. */
  static String id(Parameters parameters) {
    String cursor = parameters.cursor();
    if (cursor != null && !Ids.isRecordedId(cursor)) {
      parameters.refuseCursor();
    }
    return cursor == null ? "" : cursor;
  }
}
