package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.service.journal.AppendOutcome;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.JournalException;
import dev.poleward.service.journal.JournalRecord;
import dev.poleward.service.journal.MemoryJournal;
import dev.poleward.service.journal.Place;
import dev.poleward.service.journal.Tail;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
class ProjectionTest {

  private static final Duration LONG = Duration.ofSeconds(20);

  @TempDir private Path folder;
  private final MemoryJournal journal = new MemoryJournal();
  private final HeardFolds heard = new HeardFolds();
  private RowStore store;

  @BeforeEach
  void open() {
    store = RowStore.open(folder, RowSettings.DEFAULT);
  }

  @AfterEach
  void close() {
    store.close();
  }

  private Projection projection(Journal of, int shares) {
    return new Projection(of, store, HistoryEntries.CODEC, shares);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 12})
  void everyPartitionIsAppliedByOneOfTheThreads(int shares) {
    // Given
    for (int club = 0; club < 200; club++) {
      journal.append(List.of(Sent.event("e-1").of("club-" + club).entry()), LONG);
    }
    assertThat(journal.ends(LONG)).doesNotContain(0);

    // When
    try (Projection projection = projection(journal, shares)) {
      projection.start(heard);

      // Then
      assertThat(projection.awaitAll(journal.ends(LONG), LONG)).isTrue();
      assertThat(projection.next()).isEqualTo(journal.ends(LONG));
    }
    assertThat(heard.applied).hasValue(200);
    assertThat(heard.failures).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 13})
  void thereIsAThreadAtLeastAndNoneWithoutAPartition(int shares) {
    assertThatThrownBy(() -> projection(journal, shares))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatIsNotAppliedInTimeIsSaidSo() {
    Place place = new Place(3, 0);
    try (Projection projection = projection(journal, 1)) {
      assertThat(projection.await(List.of(place), Duration.ofMillis(5))).isFalse();
      assertThat(projection.awaitAll(new long[] {0, 1}, Duration.ofMillis(5))).isFalse();
    }
  }

  /** A journal that can be read no more. */
  private record Broken(Throwable why) implements Journal, Tail {

    @Override
    public Tail tail(List<Integer> partitions, long[] from) {
      return this;
    }

    @Override
    public List<JournalRecord> poll(Duration wait) {
      switch (why) {
        case RuntimeException e -> throw e;
        case Error e -> throw e;
        default -> throw new IllegalArgumentException(why);
      }
    }

    @Override
    public AppendOutcome append(List<Entry> entries, Duration wait) {
      throw new UnsupportedOperationException();
    }

    @Override
    public int partitionOf(String club) {
      return 0;
    }

    @Override
    public long[] ends(Duration wait) {
      return new long[PARTITIONS];
    }

    @Override
    public void wakeup() {}

    @Override
    public void close() {}
  }

  @Test
  void aFoldThatCannotGoOnSaysSoWhateverItsReason() {
    for (Throwable why : List.of(new JournalException("corrupted"), new OutOfMemoryError("none"))) {
      HeardFolds listener = new HeardFolds();
      try (Projection projection = projection(new Broken(why), 3)) {
        projection.start(listener);
        Until.holds(() -> listener.failures.size() == 3);
      }

      assertThat(listener.failures).hasSize(3).containsOnly(why);
    }
  }
}
