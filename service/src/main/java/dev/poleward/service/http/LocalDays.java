package dev.poleward.service.http;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.poleward.domain.record.ClubRecord;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.ClubReads.Reader;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * The day that ages run to: the club's local day of {@code asOf}, or today's. Remembers the time
 * zones of 1,000 clubs, so that it costs next to nothing. Safe for use by many threads.
 */
final class LocalDays {

  private static final int CLUBS_HELD_MAX = 1_000;

  /** A club's time zone is a registration: it does not depend on {@code asOf}. */
  private record Question(String club, @Nullable Instant knownAt) {}

  private record Known(long position, ZoneId zone) {}

  private final Clock clock;
  private final Cache<Question, Known> zones =
      Caffeine.newBuilder().maximumSize(CLUBS_HELD_MAX).build();

  LocalDays(Clock clock) {
    this.clock = clock;
  }

  LocalDay of(Reader reader, View view) {
    ZoneId zone = zone(reader, view);
    Instant at = view.asOf() == null ? clock.instant() : view.asOf();
    return new LocalDay(at.atZone(zone).toLocalDate(), zone);
  }

  private ZoneId zone(Reader reader, View view) {
    Question question = new Question(reader.club(), view.knownAt());
    long position = reader.reading().position();
    Known known = zones.getIfPresent(question);
    if (known == null || known.position() != position) {
      known = new Known(position, read(reader, view));
      zones.put(question, known);
    }
    return known.zone();
  }

  private static ZoneId read(Reader reader, View view) {
    return new Registry(new Placement(reader.reading().facts(), view), view)
        .club()
        .map(LocalDays::zone)
        .orElse(ZoneOffset.UTC);
  }

  private static ZoneId zone(ClubRecord club) {
    try {
      return ZoneId.of(club.timeZone());
    } catch (DateTimeException e) {
      // A name from a node with other tables of zones. The days still pass, if a few hours off.
      return ZoneOffset.UTC;
    }
  }
}
