package dev.poleward.service.http;

import dev.poleward.domain.record.Moment;
import org.jspecify.annotations.Nullable;

/**
 * How far a list of suspicions has come.
 *
 * @param opened the opening of the session
 * @param later the later rep of the last suspicion taken; null when the session is done
 */
record SuspicionCursor(Moment opened, @Nullable Moment later) {

  private static final char BETWEEN = '|';

  String written() {
    return Cursors.written(opened) + (later == null ? "" : BETWEEN + Cursors.written(later));
  }

  /** What is in the cursor; null at the beginning, and when the cursor is none of ours. */
  static @Nullable SuspicionCursor read(Parameters parameters) {
    String cursor = parameters.cursor();
    if (cursor == null) {
      return null;
    }
    int between = cursor.indexOf(BETWEEN);
    Moment opened = Cursors.moment(between < 0 ? cursor : cursor.substring(0, between));
    Moment later = between < 0 ? null : Cursors.moment(cursor.substring(between + 1));
    if (opened == null || (between >= 0 && later == null)) {
      parameters.refuseCursor();
      return null;
    }
    return new SuspicionCursor(opened, later);
  }
}
