package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.serialization.StringSerializer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KafkaJournalTest implements JournalConformance {

  private EmbeddedBroker broker;
  private Journal journal;

  @BeforeAll
  void start(@TempDir Path folder) {
    broker = EmbeddedBroker.start(folder, EmbeddedSettings.DEFAULT, new long[Journal.PARTITIONS]);
    journal = anotherJournal();
  }

  @AfterAll
  void stop() {
    journal.close();
    broker.close();
  }

  @Override
  public Journal journal() {
    return journal;
  }

  @Override
  public Journal anotherJournal() {
    return KafkaJournal.connect(broker.connection(), QueueLimits.DEFAULT, DiskSpace.ELSEWHERE);
  }

  @Test
  void aNearlyFullDiskTakesNothing() {
    // Given
    var club = Entries.aClub();
    long end = journal.ends(patience())[journal.partitionOf(club)];
    try (var full = KafkaJournal.connect(broker.connection(), QueueLimits.DEFAULT, () -> true)) {

      // When
      var outcome = full.append(List.of(Entries.entry(club, 1)), patience());

      // Then
      assertThat(outcome).isInstanceOf(AppendOutcome.DiskNearlyFull.class);
      assertThat(journal.ends(patience())[journal.partitionOf(club)]).isEqualTo(end);
    }
  }

  @Test
  void whatAnotherProgramWroteIsForeignAndCounts() throws Exception {
    // Given
    var club = Entries.aClub();
    int partition = journal.partitionOf(club);
    long[] from = journal.ends(patience());
    try (var other =
        new KafkaProducer<>(
            broker.connection().clientProperties("other"),
            new StringSerializer(),
            new StringSerializer())) {
      other.send(new ProducerRecord<>("journal", club, "hello")).get();
    }

    // When
    journal.append(List.of(Entries.entry(club, 1)), patience());

    // Then
    try (var tail = journal.tail(List.of(partition), from)) {
      var read = new ArrayList<JournalRecord>();
      while (read.size() < 2) {
        read.addAll(tail.poll(patience()));
      }
      assertThat(read.getFirst())
          .isEqualTo(
              new JournalRecord.Foreign(
                  new Place(partition, from[partition]), "it is no CloudEvent 1.0"));
      assertThat(read.getLast()).isInstanceOf(JournalRecord.Recorded.class);
      assertThat(read.getLast().place().offset()).isEqualTo(from[partition] + 1);
    }
  }

  @Test
  void manyAskWhereThePartitionsEndAndEachIsToldWhatItHasSeen() throws Exception {
    // Given
    var threads = new ArrayList<Thread>();
    var behind = new AtomicInteger();
    for (int at = 0; at < 16; at++) {
      var club = Entries.aClub();
      threads.add(
          Thread.ofVirtual()
              .start(
                  () -> {
                    for (int id = 0; id < 50; id++) {
                      var outcome = journal.append(List.of(Entries.entry(club, id)), patience());
                      var place = ((AppendOutcome.Appended) outcome).places().getFirst();
                      // Then
                      if (journal.ends(patience())[place.partition()] <= place.offset()) {
                        behind.incrementAndGet();
                      }
                    }
                  }));
    }
    for (var thread : threads) {
      thread.join();
    }

    assertThat(behind).hasValue(0);
  }

  @Test
  void theStockPartitionerAgrees() throws Exception {
    try (var stock =
        new KafkaProducer<>(
            broker.connection().clientProperties("stock"),
            new StringSerializer(),
            new StringSerializer())) {
      for (int at = 0; at < 50; at++) {
        var club = Entries.aClub() + "-é";
        assertThat(stock.send(new ProducerRecord<>("journal", club, "")).get().partition())
            .isEqualTo(journal.partitionOf(club));
      }
    }
  }

  @Test
  void aFullQueueTakesNothingUntilThereIsRoomAgain() throws Exception {
    // Given
    var club = Entries.aClub();
    var large = Entries.withData(club, "{\"notes\":\"" + "n".repeat(7_000) + "\"}");
    var limits = new QueueLimits(1_000, 8 << 20);
    try (var journal = KafkaJournal.connect(broker.connection(), limits, DiskSpace.ELSEWHERE)) {
      AppendOutcome second;
      do {
        var first =
            Thread.ofVirtual()
                .start(() -> journal.append(Collections.nCopies(1_000, large), patience()));

        // When
        do {
          second = journal.append(List.of(Entries.entry(club, 1)), patience());
        } while (second instanceof AppendOutcome.Appended && first.isAlive());
        first.join();
      } while (second instanceof AppendOutcome.Appended);

      // Then
      assertThat(second).isEqualTo(new AppendOutcome.QueueFull(Duration.ofSeconds(1)));
      assertThat(journal.append(List.of(Entries.entry(club, 2)), patience()))
          .isInstanceOf(AppendOutcome.Appended.class);
    }
  }
}
