package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.service.journal.JournalException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A reader sees all that was there when it asked, and a thousand readers cost one look-up. */
@Timeout(60)
class EndOfPartitionTest {

  private static final Duration LONG = Duration.ofSeconds(20);
  private static final Duration SHORT = Duration.ofMillis(30);

  @TempDir private Path folder;
  private final SlowJournal journal = new SlowJournal();
  private final ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor();
  private RowStore store;
  private Projection projection;
  private EndOfPartition ends;

  @BeforeEach
  void open() {
    store = RowStore.open(folder, RowSettings.DEFAULT);
    projection = new Projection(journal.journal, store, HistoryEntries.CODEC, 1);
    ends = new EndOfPartition(journal, projection, threads);
  }

  @AfterEach
  void close() {
    journal.answer(1_000);
    projection.close();
    threads.shutdownNow();
    store.close();
  }

  private void append(String id) {
    journal.append(List.of(Sent.event(id).entry()), LONG);
  }

  private Future<Boolean> reader() {
    return threads.submit(() -> ends.catchUp("saltmarsh", LONG));
  }

  /** Readers that have all begun to wait. */
  private List<Future<Boolean>> readers(int count) {
    AtomicInteger begun = new AtomicInteger();
    List<Future<Boolean>> readers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      readers.add(
          threads.submit(
              () -> {
                begun.incrementAndGet();
                return ends.catchUp("saltmarsh", LONG);
              }));
    }
    Until.holds(() -> begun.get() == count);
    LockSupport.parkNanos(50_000_000);
    return readers;
  }

  @Test
  void aReaderWaitsForAllThatWasThereWhenItAsked() throws Exception {
    // Given
    append("e-1");
    Future<Boolean> reader = reader();
    journal.answer(1);
    Until.holds(() -> journal.asked.get() == 1);
    assertThat(reader.isDone()).isFalse();

    // When
    projection.start(new HeardFolds());

    // Then
    assertThat(reader.get()).isTrue();
    assertThat(projection.next()[journal.partitionOf("saltmarsh")]).isEqualTo(1);
  }

  @Test
  void whatIsNotAppliedInTimeIsSaidSo() {
    append("e-1");
    journal.answer(1);

    assertThat(ends.catchUp("saltmarsh", SHORT)).isFalse();
  }

  @Test
  void anEndThatIsNotToldInTimeIsSaidSo() {
    assertThat(ends.catchUp("saltmarsh", SHORT)).isFalse();
  }

  @Test
  void readersThatComeWhileAQuestionIsOnItsWayShareTheNext() throws Exception {
    // Given
    Future<Boolean> first = reader();
    Until.holds(() -> journal.asked.get() == 1);
    append("e-1");
    List<Future<Boolean>> others = readers(500);

    // When
    journal.answer(1);
    assertThat(first.get()).isTrue();
    Until.holds(() -> journal.asked.get() == 2);
    LockSupport.parkNanos(50_000_000);

    // Then: what was appended before they asked is not in the first answer, so they wait for it.
    assertThat(others).noneMatch(Future::isDone);
    journal.answer(1);
    LockSupport.parkNanos(50_000_000);
    assertThat(others).noneMatch(Future::isDone);
    projection.start(new HeardFolds());
    for (Future<Boolean> other : others) {
      assertThat(other.get()).isTrue();
    }
    assertThat(journal.asked).hasValue(2);
  }

  @Test
  void oneQuestionIsAskedAtATimeAndEveryReaderSeesWhatWasThereBefore() throws Exception {
    // Given
    projection.start(new HeardFolds());
    AtomicInteger appended = new AtomicInteger();
    int partition = journal.partitionOf("saltmarsh");
    journal.answer(1_000_000);

    // When
    List<Future<Boolean>> readers = new ArrayList<>();
    for (int thread = 0; thread < 8; thread++) {
      readers.add(
          threads.submit(
              () -> {
                boolean sawAll = true;
                for (int i = 0; i < 200; i++) {
                  append("e-" + appended.incrementAndGet());
                  long before = journal.journal.ends(LONG)[partition];
                  sawAll &= ends.catchUp("saltmarsh", LONG);
                  sawAll &= projection.next()[partition] >= before;
                }
                return sawAll;
              }));
    }

    // Then
    for (Future<Boolean> reader : readers) {
      assertThat(reader.get()).isTrue();
    }
    assertThat(journal.mostAtOnce).hasValue(1);
    assertThat(journal.asked.get()).isLessThanOrEqualTo(8 * 200);
  }

  @Test
  void aJournalThatIsOutOfReachIsSaidToAllWhoAskedAndAskedAgain() throws Exception {
    // Given
    journal.failNextWith(new JournalException("out of reach"));
    journal.failNextWith(new JournalException("out of reach"));
    Future<Boolean> first = reader();
    Until.holds(() -> journal.asked.get() == 1);
    List<Future<Boolean>> others = readers(20);

    // When
    journal.answer(2);

    // Then
    assertThat(first.get()).isFalse();
    for (Future<Boolean> other : others) {
      assertThat(other.get()).isFalse();
    }
    journal.answer(1);
    assertThat(ends.catchUp("saltmarsh", LONG)).isTrue();
  }

  @Test
  void whateverElseGoesWrongReachesThoseWhoAskedAndNobodyElse() {
    for (Throwable failure : List.of(new IllegalStateException("slip"), new StackOverflowError())) {
      journal.failNextWith(failure);
      Future<Boolean> reader = reader();
      journal.answer(1);

      assertThatThrownBy(reader::get).isInstanceOf(ExecutionException.class).hasRootCause(failure);

      journal.answer(1);
      assertThat(ends.catchUp("saltmarsh", LONG)).isTrue();
    }
  }

  @Test
  void nobodyWaitsForAQuestionThatCannotBeAsked() throws Exception {
    // Given
    ExecutorService stopping = Executors.newVirtualThreadPerTaskExecutor();
    ends = new EndOfPartition(journal, projection, stopping);
    Future<Boolean> first = reader();
    Until.holds(() -> journal.asked.get() == 1);
    Future<Boolean> second = readers(1).getFirst();

    // When
    stopping.shutdown();
    journal.answer(1);

    // Then
    assertThat(first.get()).isTrue();
    assertThat(second.get()).isFalse();
    assertThat(ends.catchUp("saltmarsh", LONG)).isFalse();
    assertThat(journal.asked).hasValue(1);
  }
}
