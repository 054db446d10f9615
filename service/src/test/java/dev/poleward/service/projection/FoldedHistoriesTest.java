package dev.poleward.service.projection;

import static dev.poleward.domain.history.HistoryCheck.forRecordings;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ClubEvent;
import dev.poleward.domain.history.EveryAnswer;
import dev.poleward.domain.history.GeneratedHistory;
import dev.poleward.domain.history.RecordedEvent;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.View;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.projection.Reading.DigestAnswer;
import dev.poleward.service.projection.Reading.Fate;
import dev.poleward.service.projection.Reading.FeedEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Rows answer as facts in a list do, whichever way the events come. All histories share one store,
 * a club for each history and order, so that neighbours are common too.
 */
class FoldedHistoriesTest {

  private static final int HISTORIES = 2_000;

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
  void rowsAnswerAsFactsInAListDoInWhateverOrderTheyCame() {
    forRecordings(
        HISTORIES,
        (events, random) -> {
          // Given
          List<Entry> inOrder = HistoryEntries.of(rows.aClub(), events);
          List<Entry> muddled =
              HistoryEntries.muddled(HistoryEntries.of(rows.aClub(), events), random);

          // When
          rows.applyAll(HistoryEntries.inBatches(List.of(inOrder, muddled), random));

          // Then
          Facts facts = MemoryFacts.of(events.stream().map(RecordedEvent::fact).toList());
          Map<View, Map<String, Object>> expected = new LinkedHashMap<>();
          views(random).forEach(view -> expected.put(view, EveryAnswer.of(facts, view)));
          Map<String, Object> ofAnyView = ofAnyView(facts);
          assertAnswers(inOrder, expected, ofAnyView);
          assertAnswers(muddled, expected, ofAnyView);
        });
  }

  private static List<View> views(Random random) {
    Instant asOf = GeneratedHistory.anyTime(random);
    Instant knownAt = GeneratedHistory.anyRecordingTime(random);
    return List.of(
        View.EVERYTHING,
        random.nextBoolean() ? new View(asOf, null) : new View(null, knownAt),
        new View(GeneratedHistory.anyTime(random), GeneratedHistory.anyRecordingTime(random)));
  }

  private static void assertAnswers(
      List<Entry> arrived,
      Map<View, Map<String, Object>> expected,
      Map<String, Object> expectedOfAnyView) {
    if (arrived.isEmpty()) {
      return;
    }
    try (Reading reading = rows.open(arrived.getFirst().club())) {
      expected.forEach(
          (view, answers) -> assertSame(answers, EveryAnswer.of(reading.facts(), view)));
      assertSame(expectedOfAnyView, ofAnyView(reading.facts()));
      assertThat(reading.digest()).isEqualTo(digestOf(arrived));
    }
  }

  private static void assertSame(Map<String, Object> one, Map<String, Object> other) {
    assertThat(EveryAnswer.differences(one, other)).isEmpty();
  }

  /** Without its digest, which is no fingerprint of documents: it goes by their order in memory. */
  private static Map<String, Object> ofAnyView(Facts facts) {
    Map<String, Object> answers = EveryAnswer.ofAnyView(facts);
    answers.remove("digest");
    return answers;
  }

  private static DigestAnswer digestOf(List<Entry> entries) {
    List<String> lines =
        entries.stream()
            .filter(entry -> !(event(entry) instanceof ClubEvent))
            .map(
                entry ->
                    "%s %s %s %s\n"
                        .formatted(
                            entry.envelope().id(),
                            entry.type(),
                            DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                                entry.envelope().time().withOffsetSameInstant(ZoneOffset.UTC)),
                            entry.data()))
            .distinct()
            .sorted()
            .toList();
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest(String.join("", lines).getBytes(StandardCharsets.UTF_8));
      return new DigestAnswer(lines.size(), "sha256:" + HexFormat.of().formatHex(hash));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Object event(Entry entry) {
    Object event = new Rows(HistoryEntries.CODEC).understood(entry);
    assertThat(event).isNotNull();
    return event;
  }

  @Test
  void theFeedGivesFirstRecordingsInTheOrderOfArrivalAndFatesCountTheRest() {
    forRecordings(
        HISTORIES / 4,
        (events, random) -> {
          // Given
          String club = rows.aClub();
          List<Entry> muddled = HistoryEntries.muddled(HistoryEntries.of(club, events), random);

          // When
          rows.applyAll(HistoryEntries.inBatches(List.of(muddled), random));

          // Then
          List<FeedEvent> expected = firstRecordings(muddled, events);
          Map<String, Long> deliveries =
              muddled.stream()
                  .collect(
                      Collectors.groupingBy(entry -> entry.envelope().id(), Collectors.counting()));
          try (Reading reading = rows.open(club)) {
            assertThat(reading.position()).isEqualTo(deliveries.size());
            assertThat(inPages(reading, 1 + random.nextInt(12))).isEqualTo(expected);
            for (FeedEvent event : expected) {
              String id = event.envelope().id();
              assertThat(reading.fate(id))
                  .contains(new Fate(event, deliveries.getOrDefault(id, 0L) - 1, 0, List.of()));
            }
            assertThat(reading.fate("e-lost")).isEmpty();
          }
        });
  }

  private static List<FeedEvent> firstRecordings(List<Entry> arrived, List<RecordedEvent> events) {
    Map<String, RecordedEvent> byId = new HashMap<>();
    events.forEach(event -> byId.put(event.id(), event));
    Map<String, FeedEvent> first = new LinkedHashMap<>();
    for (Entry entry : arrived) {
      RecordedEvent event = byId.get(entry.envelope().id());
      assertThat(event).isNotNull();
      first.putIfAbsent(
          event.id(),
          new FeedEvent(
              first.size() + 1,
              entry.envelope(),
              entry.type(),
              event.event(),
              event.recorded(),
              event.sealed()));
    }
    return List.copyOf(first.values());
  }

  private static List<FeedEvent> inPages(Reading reading, int limit) {
    List<FeedEvent> all = new ArrayList<>();
    List<FeedEvent> page = reading.feed(0, limit);
    while (!page.isEmpty()) {
      all.addAll(page);
      page = reading.feed(page.getLast().position(), limit);
    }
    return all;
  }

  /**
   * Recording times that nobody gave: each node says its own, and none is before an earlier one.
   */
  @Test
  void recordingTimesThatAreNotGivenNeverDecrease() {
    forRecordings(
        HISTORIES / 4,
        (events, random) -> {
          // Given
          String club = rows.aClub();
          List<Entry> said =
              HistoryEntries.muddled(HistoryEntries.of(club, events), random).stream()
                  .map(
                      entry ->
                          new Entry(
                              club,
                              entry.envelope(),
                              entry.type(),
                              entry.data(),
                              entry.sealed(),
                              entry.recorded(),
                              false))
                  .toList();

          // When
          rows.applyAll(HistoryEntries.inBatches(List.of(said), random));

          // Then
          Instant latest = Instant.EPOCH;
          List<Instant> expected = new ArrayList<>();
          for (FeedEvent first : firstRecordings(said, events)) {
            latest = first.recorded().isAfter(latest) ? first.recorded() : latest;
            expected.add(latest);
          }
          try (Reading reading = rows.open(club)) {
            assertThat(reading.feed(0, 1_000))
                .extracting(FeedEvent::recorded)
                .isEqualTo(expected)
                .isSorted();
          }
        });
  }
}
