package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.history.RecordedEvent;
import dev.poleward.service.projection.FoldedRows;
import dev.poleward.service.projection.HistoryEntries;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ages go on while nothing is recorded: an answer is good for a day of the club's, and no longer.
 */
class DayPassesTest {

  private static final OffsetDateTime BEGUN = OffsetDateTime.parse("2026-03-01T09:00:00Z");

  @TempDir private Path folder;
  private Instant now = Instant.EPOCH;

  /** A clock that stands until it is set. */
  private final class SetClock extends Clock {
    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }

  @Test
  void theAnswerAndItsTagChangeAtTheClubsMidnight() {
    try (InMemoryParts parts = new InMemoryParts(folder);
        FoldedRows rows = new FoldedRows(folder.resolve("rows"))) {
      // Given a club two hours ahead of the clock
      String club = rows.aClub();
      rows.apply(
          HistoryEntries.of(
              club,
              List.of(
                  told("a-club", new ClubRegistered(club, "Saltmarsh", "Etc/GMT-2", null, null)),
                  told(
                      "a-dog",
                      new DogRegistered(
                          "juniper", "Juniper", new DogTraits(null, null, null, null, null))))));
      Routes routes = parts.routes(rows.reader(), new SetClock());

      // When
      Answer evening = asked(routes, club, parts, "2026-05-04T21:59:59.999Z", "");
      Answer midnight = asked(routes, club, parts, "2026-05-04T22:00:00Z", "");
      Answer morning = asked(routes, club, parts, "2026-05-05T06:00:00Z", "");
      Answer dated =
          asked(routes, club, parts, "2026-05-05T06:00:00Z", "asOf=2026-04-01T12:00:00Z");
      Answer later =
          asked(routes, club, parts, "2026-08-05T06:00:00Z", "asOf=2026-04-01T12:00:00Z");

      // Then
      assertThat(body(evening)).contains("\"agedTo\":\"2026-05-04\"");
      assertThat(body(midnight)).contains("\"agedTo\":\"2026-05-05\"");
      assertThat(tag(midnight)).isNotEqualTo(tag(evening)).isEqualTo(tag(morning));
      assertThat(body(morning)).isEqualTo(body(midnight));
      assertThat(body(dated)).contains("\"agedTo\":\"2026-04-01\"");
      assertThat(tag(later)).isEqualTo(tag(dated));
    }
  }

  private static RecordedEvent told(String id, TrainingEvent event) {
    Envelope envelope = new Envelope(id, "/apps/field-notes", BEGUN, null, null, Map.of());
    return new RecordedEvent(envelope, BEGUN.toInstant(), event, null);
  }

  private Answer asked(Routes routes, String club, InMemoryParts parts, String time, String query) {
    now = Instant.parse(time);
    Routes.Known route =
        routes.all().stream()
            .filter(each -> each.path().endsWith("/angle-mastery"))
            .findFirst()
            .orElseThrow();
    Map<String, String> inPath = Map.of("club", club, "dog", "juniper");
    return new AskedRead(route, inPath, query, "application/json", parts.hostKey()).answer();
  }

  private static String body(Answer answer) {
    assertThat(answer.status()).isEqualTo(200);
    return new String(answer.body(), StandardCharsets.UTF_8);
  }

  private static String tag(Answer answer) {
    return String.valueOf(answer.headers().get("ETag"));
  }
}
