package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.history.RecordedEvent;
import dev.poleward.service.projection.FoldedRows;
import dev.poleward.service.projection.HistoryEntries;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One request does not look at more reps than is said, however many sessions are left. */
class ManyRepsTest {

  private static final OffsetDateTime BEGUN = OffsetDateTime.parse("2026-03-01T09:00:00Z");

  @TempDir private Path folder;

  @Test
  void afterFiftyThousandRepsNoFurtherSessionIsBegun() {
    try (InMemoryParts parts = new InMemoryParts(folder);
        FoldedRows rows = new FoldedRows(folder.resolve("rows"))) {
      // Given a session as full as may be, and behind it one with a rep that was logged twice
      String club = rows.aClub();
      List<RecordedEvent> events = new ArrayList<>();
      events.add(told("a-club", 0, new ClubRegistered(club, "Saltmarsh", "Etc/UTC", null, null)));
      events.add(
          told(
              "a-dog",
              0,
              new DogRegistered(
                  "juniper", "Juniper", new DogTraits(null, null, null, null, null))));
      events.add(told("full", 1, opened("full")));
      for (int i = 0; i < SuspicionRoutes.REPS_MAX; i++) {
        events.add(told("e-" + i, 60 + 60L * i, logged("r-" + i, "full")));
      }
      events.add(told("next", 2, opened("next")));
      events.add(told("once", 10, logged("once", "next")));
      events.add(told("twice", 12, logged("twice", "next")));
      rows.apply(HistoryEntries.of(club, events));
      Routes.Known route =
          parts.routes(rows.reader()).all().stream()
              .filter(each -> each.path().endsWith("/suspected-duplicates"))
              .findFirst()
              .orElseThrow();

      // When
      AskedRead first =
          new AskedRead(route, Map.of("club", club), "", Answer.JSON, parts.hostKey());
      Answer looked = first.answer();
      String link = String.valueOf(looked.headers().get("Link"));

      // Then
      assertThat(body(looked)).contains("\"suspectedDuplicates\":[]");
      assertThat(link).contains("cursor=");
      assertThat(body(first.following(link).answer())).contains("\"rep\":\"twice\"");
    }
  }

  private static SessionOpened opened(String session) {
    return new SessionOpened(session, null, null, null, null, null);
  }

  private static RepLogged logged(String rep, String session) {
    return new RepLogged(rep, session, "juniper", Manoeuvre.SEND, Outcome.CLEAN, RepDetails.NONE);
  }

  private static RecordedEvent told(String id, long second, TrainingEvent event) {
    OffsetDateTime time = BEGUN.plusSeconds(second);
    Envelope envelope = new Envelope(id, "/apps/field-notes", time, null, null, Map.of());
    return new RecordedEvent(envelope, time.toInstant(), event, null);
  }

  private static String body(Answer answer) {
    assertThat(answer.status()).isEqualTo(200);
    return new String(answer.body(), StandardCharsets.UTF_8);
  }
}
