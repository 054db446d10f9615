package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.journal.AppendOutcome.Appended;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.MemoryJournal;
import dev.poleward.service.journal.Place;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever stands in the topic, the fold goes on, and nobody waits for a record in vain. */
@Timeout(60)
class PassedOverTest {

  private static final Duration LONG = Duration.ofSeconds(20);

  @TempDir private Path folder;
  private final MemoryJournal journal = new MemoryJournal();
  private final HeardFolds heard = new HeardFolds();
  private RowStore store;
  private Projection projection;

  @BeforeEach
  void start() {
    store = RowStore.open(folder, RowSettings.DEFAULT);
    projection = new Projection(journal, store, HistoryEntries.CODEC, 2);
    projection.start(heard);
  }

  @AfterEach
  void stop() {
    projection.close();
    store.close();
    journal.close();
  }

  private Place append(Entry entry) {
    return ((Appended) journal.append(List.of(entry), LONG)).places().getFirst();
  }

  private long position(String club) {
    try (Reading reading =
        new RowClubReader(store, HistoryEntries.CODEC, CatchUp.SOLE_NODE).open(club)) {
      return reading.position();
    }
  }

  /** Appends a record that is none of ours, then a good one: both are waited for in time. */
  private void assertPassedOver(Entry strange) {
    Place passedOver = append(strange);
    assertThat(projection.await(List.of(passedOver), LONG)).isTrue();
    assertThat(heard.passedOver).hasValue(1);
    assertThat(position(strange.club())).isZero();
    assertGoesOn();
  }

  private void assertGoesOn() {
    Place good = append(Sent.event("e-1").entry());
    assertThat(projection.await(List.of(good), LONG)).isTrue();
    assertThat(position("saltmarsh")).isEqualTo(1);
    assertThat(heard.failures).isEmpty();
    assertThat(projection.next()).isEqualTo(Projection.appliedIn(store));
    assertThat(projection.next()).isEqualTo(journal.ends(LONG));
  }

  @Test
  void foreignRecordsMoveTheOffset() {
    int partition = journal.partitionOf("saltmarsh");
    Place foreign = journal.appendForeign(partition, "it has no key");

    assertThat(projection.await(List.of(foreign), LONG)).isTrue();

    assertThat(heard.passedOver).hasValue(1);
    assertGoesOn();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "dog.registered.v9 | {'dog':'juniper'}",
        "dog.registered    | {'dog':'juniper'}",
        "cat.registered.v1 | {'cat':'moss'}",
        "''                | {}"
      })
  void typesThatAreNotKnownArePassedOver(String type, String data) {
    assertPassedOver(Sent.event("e-1").says(type, data).entry());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[]",
        "null",
        "7",
        "{}",
        "{\"dog\":5,\"callName\":\"Juniper\"}",
        "{\"dog\":\"juniper\"}",
        "{\"dog\":\"juniper\",\"callName\":\"Juniper\",\"born\":\"yesterday\"}",
        "{\"dog\":\"juniper\",\"callName\":\"Juniper\",\"heatRisk\":\"warm\"}",
        "{\"dog\":\"juni\\u0000per\",\"callName\":\"Juniper\"}",
        "{\"dog\":\"juniper\",\"callName\":\"Juniper\",\"handlers\":[\"a\\u0000b\"]}"
      })
  void dataThatItsTypeDoesNotPromiseIsPassedOver(String data) {
    assertPassedOver(Sent.event("e-1").raw(data));
  }

  @Test
  void dataThatIsNestedWithoutEndIsPassedOver() {
    String deep = "{'limits':".replace('\'', '"').repeat(100_000);

    assertPassedOver(Sent.event("e-1").says("dog.cleared.v1", "{}").raw(deep));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a b", "a/b", "a\u0000b", "ü", "{}"})
  void whatIsNoIdIsPassedOver(String noId) {
    assertPassedOver(Sent.event(noId).entry());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "salt marsh", "saltmarsh\u0000", "saltmarsh/", "säl"})
  void whatIsNoClubIsPassedOver(String noClub) {
    assertPassedOver(Sent.event("e-1").of(noClub).entry());
  }

  @Test
  void idsOfSixtyFourCharactersAreTheLongest() {
    Place longest = append(Sent.event("x".repeat(64)).of("y".repeat(64)).entry());
    Place tooLong = append(Sent.event("x".repeat(65)).of("y".repeat(64)).entry());

    assertThat(projection.await(List.of(longest, tooLong), LONG)).isTrue();

    assertThat(position("y".repeat(64))).isEqualTo(1);
    assertThat(heard.passedOver).hasValue(1);
  }

  /** Repeats and contradictions are applied too, and say what they did. */
  @Test
  void everyRecordTellsWhatItDid() {
    Entry first = Sent.event("e-1").entry();
    Entry other = Sent.event("e-1").at("2026-01-01T00:00:00Z").entry();

    Place recorded = append(first);
    Place repeated = append(first);
    Place contradicted = append(other);

    assertThat(projection.await(List.of(recorded, repeated, contradicted), LONG)).isTrue();
    assertThat(effect(first, recorded)).isEqualTo(Applied.Effect.RECORDED);
    assertThat(effect(first, repeated)).isEqualTo(Applied.Effect.REPEATED);
    assertThat(effect(other, contradicted)).isEqualTo(Applied.Effect.CONTRADICTED);
    projection.close();
    assertThat(heard.passedOver).hasValue(0);
    assertThat(heard.applied).hasValue(3);
  }

  private Applied.Effect effect(Entry entry, Place place) {
    return projection.effect("saltmarsh", "e-1", place, ContentHash.of(entry));
  }

  @Test
  void whoIsForgottenIsSaidOnceTheRowsSaySo() {
    Entry forgetting = Sent.event("e-9").says("person.forgotten.v1", "{'handler':'ines'}").entry();

    assertThat(projection.await(List.of(append(forgetting), append(forgetting)), LONG)).isTrue();
    projection.close();

    assertThat(heard.forgotten).containsExactly("saltmarsh/ines", "saltmarsh/ines");
  }
}
