package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.projection.Reading.Contradiction;
import dev.poleward.service.projection.Reading.Fate;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two contents under one id: the one that is recorded first stands, and nothing is lost. */
class ContradictionsTest {

  private static final Entry FIRST = Sent.event("e-1").entry();
  private static final Entry RENAMED =
      Sent.event("e-1").says("dog.registered.v1", "{'dog':'juniper','callName':'Juno'}").entry();
  private static final Entry LATER = Sent.event("e-1").at("2026-05-04T18:02:12+01:00").entry();
  private static final Entry OF_ANOTHER_TYPE =
      Sent.event("e-1").says("session.opened.v1", "{'session':'s-1'}").entry();

  @TempDir private Path folder;
  private FoldedRows rows;

  @BeforeEach
  void open() {
    rows = new FoldedRows(folder);
  }

  @AfterEach
  void close() {
    rows.close();
  }

  private Fate fate() {
    try (Reading reading = rows.open("saltmarsh")) {
      return reading.fate("e-1").orElseThrow();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7})
  void theFirstStandsAndTheOthersAreKeptInTheOrderOfArrival(int batch) {
    // Given
    List<Entry> sent = List.of(FIRST, RENAMED, FIRST, LATER, OF_ANOTHER_TYPE, RENAMED, FIRST);

    // When
    for (int from = 0; from < sent.size(); from += batch) {
      rows.apply(sent.subList(from, Math.min(sent.size(), from + batch)));
    }

    // Then
    Fate fate = fate();
    assertThat(fate.event().envelope()).isEqualTo(FIRST.envelope());
    assertThat(fate.event().position()).isEqualTo(1);
    assertThat(fate.repeated()).isEqualTo(2);
    assertThat(fate.contradicted()).isEqualTo(4);
    assertThat(fate.contradictions())
        .containsExactly(kept(RENAMED), kept(LATER), kept(OF_ANOTHER_TYPE), kept(RENAMED));
  }

  private static Contradiction kept(Entry entry) {
    return new Contradiction(entry.envelope(), entry.type(), entry.data(), entry.recorded());
  }

  @Test
  void aContradictionChangesNoAnswer() {
    // Given
    rows.apply(List.of(FIRST));
    Reading before = rows.open("saltmarsh");

    // When
    rows.apply(List.of(RENAMED, OF_ANOTHER_TYPE, LATER));

    // Then
    try (before;
        Reading after = rows.open("saltmarsh")) {
      assertThat(after.position()).isEqualTo(1);
      assertThat(after.digest()).isEqualTo(before.digest());
      assertThat(after.feed(0, 10)).isEqualTo(before.feed(0, 10)).hasSize(1);
      EntityRef juniper = new EntityRef(EntityKind.DOG, "juniper");
      assertThat(after.facts().about(juniper)).isEqualTo(before.facts().about(juniper)).hasSize(1);
      assertThat(after.facts().announced(EntityKind.SESSION, "", 10)).isEmpty();
      assertThat(after.facts().sessionsOpened(null, 10)).isEmpty();
    }
  }

  @Test
  void aHundredAreKeptAsRowsAndTheCountGoesOn() {
    // Given
    List<Entry> sent = new ArrayList<>(List.of(FIRST));
    IntStream.range(0, 130).mapToObj(ContradictionsTest::named).forEach(sent::add);

    // When
    rows.apply(sent.subList(0, 60));
    rows.apply(sent.subList(60, sent.size()));

    // Then
    assertThat(fate().contradicted()).isEqualTo(130);
    assertThat(fate().contradictions())
        .extracting(Contradiction::data)
        .isEqualTo(IntStream.range(0, 100).mapToObj(at -> named(at).data()).toList());
  }

  private static Entry named(int at) {
    return Sent.event("e-1")
        .says("dog.registered.v1", "{'dog':'juniper','callName':'Juniper %d'}".formatted(at))
        .entry();
  }

  @Test
  void aReadingSeesWhatWasThereWhenItWasOpened() {
    // Given
    rows.apply(List.of(FIRST));
    try (Reading reading = rows.open("saltmarsh")) {

      // When
      rows.apply(List.of(RENAMED, FIRST, Sent.event("e-2").entry()));

      // Then
      assertThat(reading.position()).isEqualTo(1);
      assertThat(reading.fate("e-1").orElseThrow().repeated()).isZero();
      assertThat(reading.fate("e-1").orElseThrow().contradictions()).isEmpty();
      assertThat(reading.fate("e-2")).isEmpty();
      assertThat(reading.feed(0, 10)).hasSize(1);
    }
  }

  @Test
  void recordingTimesOfContradictionsAreTheirOwn() {
    rows.apply(
        List.of(
            FIRST, Sent.event("e-1").at("2026-01-01T00:00:00Z").recordedAt("09:00:00").entry()));

    assertThat(fate().contradictions())
        .extracting(Contradiction::recorded)
        .containsExactly(Instant.parse("2026-05-05T09:00:00Z"));
  }
}
