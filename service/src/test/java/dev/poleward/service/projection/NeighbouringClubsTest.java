package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.history.EveryAnswer;
import dev.poleward.domain.history.GeneratedHistory;
import dev.poleward.domain.history.RecordedEvent;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.View;
import dev.poleward.service.journal.Entry;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One club can never see another, however much alike their ids are, and those inside them. */
class NeighbouringClubsTest {

  private static final List<String> CLUBS =
      List.of("a", "a-", "a-b", "aa", "a.", "a~", "a_", "A", "-", "a-b-c", "0", "club", "e-aa1");

  @TempDir private Path folder;

  @Test
  void everyClubAnswersAsIfItWereAlone() {
    try (FoldedRows rows = new FoldedRows(folder)) {
      for (int round = 0; round < 8; round++) {
        // Given
        Map<String, List<RecordedEvent>> histories = new LinkedHashMap<>();
        for (String club : CLUBS) {
          long seed = 1_000L * round + histories.size();
          histories.put(club + round, GeneratedHistory.withInternalEvents(seed).events());
        }
        List<List<Entry>> sent = new ArrayList<>();
        histories.forEach((club, events) -> sent.add(HistoryEntries.of(club, events)));

        // When
        rows.applyAll(HistoryEntries.inBatches(sent, new Random(round)));

        // Then
        histories.forEach((club, events) -> assertAlone(rows, club, events));
      }
    }
  }

  private static void assertAlone(FoldedRows rows, String club, List<RecordedEvent> events) {
    Facts alone = MemoryFacts.of(events.stream().map(RecordedEvent::fact).toList());
    try (Reading reading = rows.open(club)) {
      assertThat(
              EveryAnswer.differences(
                  EveryAnswer.of(alone, View.EVERYTHING),
                  EveryAnswer.of(reading.facts(), View.EVERYTHING)))
          .isEmpty();
      assertThat(reading.position()).isEqualTo(events.size());
      assertThat(reading.feed(0, 1_000))
          .extracting(event -> event.envelope().id())
          .isEqualTo(events.stream().map(RecordedEvent::id).toList());
      assertThat(reading.digest().events()).isLessThanOrEqualTo(events.size());
    }
  }

  @Test
  void theSameEventsInTwoClubsAreEachTheirOwn() {
    try (FoldedRows rows = new FoldedRows(folder)) {
      // Given
      Sent juniper = Sent.event("e-1");
      Sent juno = juniper.says("dog.registered.v1", "{'dog':'juniper','callName':'Juno'}");

      // When
      rows.apply(List.of(juniper.of("a").entry(), juno.of("aa").entry(), juniper.of("a").entry()));

      // Then
      try (Reading a = rows.open("a");
          Reading aa = rows.open("aa");
          Reading nobody = rows.open("a-")) {
        assertThat(a.fate("e-1").orElseThrow().repeated()).isEqualTo(1);
        assertThat(aa.fate("e-1").orElseThrow().contradicted()).isZero();
        assertThat(a.digest()).isNotEqualTo(aa.digest());
        assertThat(nobody.position()).isZero();
        assertThat(nobody.feed(0, 10)).isEmpty();
        assertThat(nobody.fate("e-1")).isEmpty();
        assertThat(nobody.digest().events()).isZero();
      }
    }
  }
}
