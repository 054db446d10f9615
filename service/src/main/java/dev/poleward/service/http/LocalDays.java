package dev.poleward.service.http;

import dev.poleward.domain.record.ClubRecord;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.projection.Remembered;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * The day that ages run to: the club's local day of {@code asOf}, or today's. Time zones are
 * remembered, so that it costs next to nothing. Safe for use by many threads.
 */
final class LocalDays {

  private static final long BYTES_HELD_MAX = 1L << 20;

  /** About what a question takes; zones are the platform's own and few. */
  private static final int BYTES_OF_QUESTION = 64;

  /** A club's time zone is a registration: it does not depend on {@code asOf}. */
  private record Question(@Nullable Instant knownAt) {}

  private final Clock clock;
  private final Remembered<Question, ZoneId> zones =
      new Remembered<>(BYTES_HELD_MAX, (_, _) -> BYTES_OF_QUESTION);

  LocalDays(Clock clock) {
    this.clock = clock;
  }

  /**
   * The day of what a call asks for, as answers that go with the day are marked: with the day, and
   * not with the clock, an answer changes that nothing was recorded for.
   */
  String agedTo(Call call, Reader reader) {
    return of(reader, Asked.viewOf(call)).date().toString();
  }

  /** Today in the club, for what does not look back. */
  LocalDay today(Reader reader) {
    return of(reader, View.EVERYTHING);
  }

  /** The same as a mark. */
  String today(Call call, Reader reader) {
    return today(reader).date().toString();
  }

  LocalDay of(Reader reader, View view) {
    ZoneId zone =
        zones.of(reader.reading(), new Question(view.knownAt()), () -> read(reader, view));
    Instant at = view.asOf() == null ? clock.instant() : view.asOf();
    return new LocalDay(at.atZone(zone).toLocalDate(), zone);
  }

  private static ZoneId read(Reader reader, View view) {
    return zone(new Registry(new Placement(reader.reading().facts(), view), view));
  }

  /** The zone of the days of a registry's club. */
  static ZoneId zone(Registry registry) {
    return registry.club().map(LocalDays::zone).orElse(ZoneOffset.UTC);
  }

  /** The zone of a club's days. */
  static ZoneId zone(ClubRecord club) {
    try {
      return ZoneId.of(club.timeZone());
    } catch (DateTimeException e) {
      // A name from a node with other tables of zones. The days still pass, if a few hours off.
      return ZoneOffset.UTC;
    }
  }
}
