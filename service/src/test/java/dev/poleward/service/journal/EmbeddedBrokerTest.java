package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Starts after a stop, a kill and worse. A copy of the folder of a running broker is what a kill
 * leaves behind, so one broker serves as the murdered for all tests.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(120)
class EmbeddedBrokerTest {

  private static final Duration LONG = Duration.ofSeconds(20);
  private static final int ENTRIES = 300;

  private final long[] nothingKnown = new long[Journal.PARTITIONS];
  private Path running;
  private EmbeddedBroker broker;
  private long[] acknowledged;
  private int partition;

  @BeforeAll
  void aBrokerWithEntries(@TempDir Path folder) {
    running = folder;
    broker = EmbeddedBroker.start(folder, EmbeddedSettings.DEFAULT, nothingKnown);
    try (var journal = connect(broker)) {
      for (int at = 0; at < ENTRIES; at++) {
        journal.append(List.of(Entries.entry("club-" + at % 40, at)), LONG);
      }
      acknowledged = journal.ends(LONG);
      partition = journal.partitionOf("club-1");
    }
    assertThat(LongStream.of(acknowledged).sum()).isEqualTo(ENTRIES);
  }

  @AfterAll
  void stop() {
    broker.close();
  }

  @Test
  void afterAKillAllIsThereAndMoreCanBeAppended(@TempDir Path copy) throws IOException {
    // Given
    killedInto(copy);

    // When
    try (var again = EmbeddedBroker.start(copy, EmbeddedSettings.DEFAULT, acknowledged);
        var journal = connect(again)) {

      // Then
      assertThat(journal.ends(LONG)).isEqualTo(acknowledged);
      assertThat(count(journal, ENTRIES)).isEqualTo(ENTRIES);
      assertThat(journal.append(List.of(Entries.entry("club-1", 1)), LONG))
          .isEqualTo(
              new AppendOutcome.Appended(List.of(new Place(partition, acknowledged[partition]))));
    }

    // And after a stop in order, on other ports
    try (var again = EmbeddedBroker.start(copy, EmbeddedSettings.DEFAULT, acknowledged);
        var journal = connect(again)) {
      assertThat(count(journal, ENTRIES + 1)).isEqualTo(ENTRIES + 1);
    }
  }

  @Test
  void anUnfinishedAppendIsCutOffAndNothingElse(@TempDir Path copy) throws IOException {
    // Given
    killedInto(copy);
    var log = log(copy);
    JournalFiles.append(log, JournalFiles.batch(acknowledged[partition], 0).limit(90));

    // When
    try (var again = EmbeddedBroker.start(copy, EmbeddedSettings.DEFAULT, acknowledged);
        var journal = connect(again)) {

      // Then
      assertThat(journal.ends(LONG)).isEqualTo(acknowledged);
      journal.append(List.of(Entries.entry("club-1", 1)), LONG);
      assertThat(count(journal, ENTRIES + 1)).isEqualTo(ENTRIES + 1);
    }
  }

  @Test
  void aDamagedBatchStopsTheStart(@TempDir Path copy) throws IOException {
    // Given
    killedInto(copy);
    var log = log(copy);
    JournalFiles.flip(log, (int) Files.size(log) / 2, 8);
    byte[] damaged = Files.readAllBytes(log);

    // Then
    assertThatThrownBy(() -> EmbeddedBroker.start(copy, EmbeddedSettings.DEFAULT, nothingKnown))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining(log.toString())
        .hasMessageContaining("Nothing was changed");
    assertThat(log).hasBinaryContent(damaged);
  }

  @Test
  void aPortInUseIsSaid(@TempDir Path copy) throws IOException {
    try (var taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      int port = taken.getLocalPort();

      assertThatThrownBy(
              () ->
                  EmbeddedBroker.start(
                      copy, new EmbeddedSettings(port, PersonKeyTiming.DEFAULT), nothingKnown))
          .isInstanceOf(CannotStart.class)
          .hasMessageContaining("Port " + port + " of this machine is in use");
    }
  }

  @Test
  void aBrokerThatForgotItsTopicsIsNotBelieved(@TempDir Path copy) throws IOException {
    // Given
    killedInto(copy);
    try (var files = Files.list(copy.resolve("__cluster_metadata-0"))) {
      for (var file : files.toList()) {
        Files.delete(file);
      }
    }

    // Then
    assertThatThrownBy(() -> EmbeddedBroker.start(copy, EmbeddedSettings.DEFAULT, nothingKnown))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("does not know");
    assertThat(log(copy)).exists();
  }

  @Test
  void whileItIsAwayAppendsAreUnavailableAndAfterwardsAllGoesOn(@TempDir Path folder)
      throws Exception {
    // Given
    var settings = new EmbeddedSettings(aFreePort(), PersonKeyTiming.DEFAULT);
    var first = EmbeddedBroker.start(folder, settings, nothingKnown);
    try (var journal = connect(first);
        var tail = journal.tail(List.of(journal.partitionOf("club-1")), nothingKnown)) {
      journal.append(List.of(Entries.entry("club-1", 1)), LONG);
      assertThat(tail.poll(LONG)).hasSize(1);

      // When
      first.close();

      // Then
      assertThat(journal.append(List.of(Entries.entry("club-1", 2)), Duration.ofMillis(100)))
          .isInstanceOf(AppendOutcome.Unavailable.class);
      assertThat(tail.poll(Duration.ofMillis(10))).isEmpty();
      assertThatThrownBy(() -> journal.ends(Duration.ofMillis(100)))
          .isInstanceOf(JournalException.class);

      // And when it is back
      try (var second = EmbeddedBroker.start(folder, settings, nothingKnown)) {
        assertThat(second.connection()).isEqualTo(first.connection());
        AppendOutcome outcome;
        do {
          outcome = journal.append(List.of(Entries.entry("club-1", 3)), LONG);
        } while (!(outcome instanceof AppendOutcome.Appended));
        assertThat(tail.poll(LONG)).isNotEmpty();
      }
    }
  }

  private static int aFreePort() throws IOException {
    try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private Path log(Path folder) {
    return folder.resolve("journal-" + partition).resolve("00000000000000000000.log");
  }

  private static KafkaJournal connect(EmbeddedBroker broker) {
    return KafkaJournal.connect(broker.connection(), QueueLimits.DEFAULT, DiskSpace.ELSEWHERE);
  }

  private static long count(Journal journal, int atLeast) {
    var all = IntStream.range(0, Journal.PARTITIONS).boxed().toList();
    long count = 0;
    long giveUpAt = System.nanoTime() + LONG.toNanos();
    try (var tail = journal.tail(all, new long[Journal.PARTITIONS])) {
      while (count < atLeast && System.nanoTime() - giveUpAt < 0) {
        for (var record : tail.poll(Duration.ofMillis(200))) {
          assertThat(record).isInstanceOf(JournalRecord.Recorded.class);
          count++;
        }
      }
    }
    return count;
  }

  private void killedInto(Path copy) throws IOException {
    try (var files = Files.walk(running)) {
      for (var file : (Iterable<Path>) files::iterator) {
        var target = copy.resolve(running.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else if (!file.endsWith(".lock") && !file.toString().endsWith(".tmp")) {
          Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
        }
      }
    }
  }
}
