package dev.poleward.service.projection;

import static dev.poleward.domain.history.HistoryCheck.forRecordings;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.history.RecordedEvent;
import dev.poleward.domain.record.Announcement;
import dev.poleward.domain.record.Corrections;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Filing;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.References;
import dev.poleward.service.journal.Entry;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The facts themselves, question by question, before the domain makes anything of them: what it
 * would leave out again must not be there either.
 */
class RowFactsTest {

  private static final int HISTORIES = 400;
  private static final List<Instant> MIDNIGHTS =
      Stream.of("1969-12-31T00:00:00Z", "1970-01-01T00:00:00Z", "2026-03-03T00:00:00Z")
          .map(Instant::parse)
          .toList();

  @TempDir private static Path folder;
  private static FoldedRows rows;

  @BeforeAll
  static void open() {
    rows = new FoldedRows(folder);
  }

  @AfterAll
  static void close() {
    rows.close();
  }

  @Test
  void everyQuestionIsAnsweredAsFactsInAListAnswerIt() {
    forRecordings(
        HISTORIES,
        (events, random) -> {
          // Given
          List<RecordedEvent> aroundMidnight =
              events.stream().map(event -> aroundMidnight(event, random)).toList();
          String club = rows.aClub();
          List<Entry> entries =
              HistoryEntries.muddled(HistoryEntries.of(club, aroundMidnight), random);

          // When: somebody looks while half of it is there
          int half = entries.size() / 2;
          rows.applyAll(HistoryEntries.inBatches(List.of(entries.subList(0, half)), random));
          try (Reading early = rows.open(club)) {
            early.facts().corrections();
          }
          rows.applyAll(
              HistoryEntries.inBatches(List.of(entries.subList(half, entries.size())), random));

          // Then
          List<Fact<?>> facts = new ArrayList<>();
          aroundMidnight.forEach(event -> facts.add(event.fact()));
          try (Reading reading = rows.open(club)) {
            assertSame(facts, MemoryFacts.of(facts), reading.facts(), 1 + random.nextInt(4));
          }
        });
  }

  private static RecordedEvent aroundMidnight(RecordedEvent event, Random random) {
    Instant midnight = MIDNIGHTS.get(random.nextInt(MIDNIGHTS.size()));
    OffsetDateTime time =
        midnight
            .plusNanos(random.nextInt(-1, 2))
            .plusSeconds(random.nextInt(-1, 2))
            .atOffset(ZoneOffset.UTC);
    Envelope envelope = event.envelope();
    return new RecordedEvent(
        new Envelope(
            envelope.id(),
            envelope.source(),
            time,
            envelope.subject(),
            envelope.dataschema(),
            envelope.extensions()),
        event.recorded(),
        event.event(),
        event.sealed());
  }

  private static void assertSame(List<Fact<?>> all, Facts expected, Facts found, int limit) {
    Instant early = MIDNIGHTS.get(limit % 2);
    Instant late = MIDNIGHTS.get(1 + limit % 2);
    for (EntityRef entity : named(all)) {
      String id = entity.id();
      assertThat(found.about(entity)).isEqualTo(byMoment(expected.about(entity)));
      assertThat(found.event(id)).isEqualTo(expected.event(id));
      assertThat(found.repsOf(id)).isEqualTo(byMoment(expected.repsOf(id)));
      assertThat(byMoment(found.repsIn(id))).isEqualTo(byMoment(expected.repsIn(id)));
      assertThat(byMoment(found.repsLoggedAs(id))).isEqualTo(byMoment(expected.repsLoggedAs(id)));
      assertThat(found.timingsOf(id, early, late))
          .isEqualTo(byMoment(expected.timingsOf(id, early, late)));
      assertSame(id, expected.corrections(), found.corrections());
    }
    for (EntityKind kind : EntityKind.values()) {
      assertThat(announced(found, kind, limit)).isEqualTo(expected.announced(kind, "", 1_000));
    }
    assertThat(opened(found, limit)).isEqualTo(expected.sessionsOpened(null, 1_000));
    assertThat(found.corrections().merges())
        .hasSameElementsAs(expected.corrections().merges())
        .hasSameSizeAs(expected.corrections().merges());
    assertThat(found.corrections().withdrawnEvents())
        .isEqualTo(expected.corrections().withdrawnEvents());
    List<Fact<?>> every = new ArrayList<>();
    found.all(every::add);
    assertThat(byMoment(every)).isEqualTo(byMoment(all));
    Set<Fact<?>> unmet = new HashSet<>();
    found.everUnmet(unmet::add);
    expected.everUnmet(fact -> assertThat(unmet).contains(fact));
    assertThat(every).containsAll(unmet);
  }

  private static void assertSame(String id, Corrections expected, Corrections found) {
    assertThat(found.repsMovedToDog(id)).isEqualTo(expected.repsMovedToDog(id));
    assertThat(found.repsMovedToSession(id)).isEqualTo(expected.repsMovedToSession(id));
    assertThat(found.loggedTwice(id)).isEqualTo(expected.loggedTwice(id));
    assertThat(byMoment(found.amendmentsOf(id))).isEqualTo(byMoment(expected.amendmentsOf(id)));
    assertThat(byMoment(found.pairingsOf(id))).isEqualTo(byMoment(expected.pairingsOf(id)));
    assertThat(byMoment(found.withdrawalsOf(id))).isEqualTo(byMoment(expected.withdrawalsOf(id)));
  }

  private static <F extends Fact<?>> List<F> byMoment(Collection<F> facts) {
    return facts.stream().sorted((one, other) -> one.moment().compareTo(other.moment())).toList();
  }

  private static Set<EntityRef> named(List<Fact<?>> facts) {
    Set<EntityRef> named = new TreeSet<>();
    named.add(new EntityRef(EntityKind.DOG, "nobody"));
    for (Fact<?> fact : facts) {
      named.addAll(References.of(fact.event()));
      named.add(new EntityRef(EntityKind.EVENT, fact.id()));
      Stream.ofNullable(Announcement.of(fact.event())).forEach(named::add);
      Stream.ofNullable(Filing.of(fact.event())).forEach(named::add);
    }
    return named;
  }

  private static List<String> announced(Facts facts, EntityKind kind, int limit) {
    List<String> all = new ArrayList<>();
    List<String> page = facts.announced(kind, "", limit);
    while (!page.isEmpty()) {
      assertThat(page).hasSizeLessThanOrEqualTo(limit);
      all.addAll(page);
      assertThat(all).as("the pages end somewhere").hasSizeLessThan(1_000);
      page = facts.announced(kind, page.getLast(), limit);
    }
    return all;
  }

  private static List<Fact<SessionOpened>> opened(Facts facts, int limit) {
    List<Fact<SessionOpened>> all = new ArrayList<>();
    List<Fact<SessionOpened>> page = facts.sessionsOpened(null, limit);
    while (!page.isEmpty()) {
      assertThat(page).hasSizeLessThanOrEqualTo(limit);
      all.addAll(page);
      assertThat(all).as("the pages end somewhere").hasSizeLessThan(1_000);
      Moment last = page.getLast().moment();
      page = facts.sessionsOpened(last, limit);
    }
    return all;
  }
}
