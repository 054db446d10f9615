package dev.poleward.load.training;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.journal.AppendOutcome;
import dev.poleward.service.journal.DiskSpace;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.KafkaConnection;
import dev.poleward.service.journal.KafkaJournal;
import dev.poleward.service.journal.QueueLimits;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

/** Many events written into a journal fast: as records of the service's own form, past its HTTP. */
public final class JournalFilling {

  private static final int THREADS = 8;
  private static final int APPEND = 1_000;
  private static final Duration APPEND_MAX = Duration.ofSeconds(30);
  private static final ObjectMapper JSON = new ObjectMapper();

  private JournalFilling() {}

  /**
   * Writes the histories of clubs that are registered already, and returns when all is durable.
   *
   * @param kafka where the broker is, {@code host:port}
   * @param eventsOfClub how many events each club gets
   */
  public static void fill(String kafka, List<String> clubs, int eventsOfClub) {
    try (KafkaJournal journal =
            KafkaJournal.connect(
                KafkaConnection.open(kafka), QueueLimits.DEFAULT, DiskSpace.ELSEWHERE);
        ExecutorService threads = Executors.newFixedThreadPool(THREADS)) {
      List<Future<?>> all =
          IntStream.range(0, clubs.size())
              .<Future<?>>mapToObj(
                  i -> threads.submit(() -> fill(journal, clubs.get(i), i, eventsOfClub)))
              .toList();
      for (Future<?> each : all) {
        each.get();
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException("the journal was not filled", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the journal was filled", e);
    }
  }

  private static void fill(Journal journal, String club, long seed, int events) {
    ClubHistory history = new ClubHistory(seed, ClubHistory.Shape.USUAL);
    for (int left = events; left > 0; left -= APPEND) {
      List<Sending> some = history.next(Math.min(left, APPEND));
      requireCanonical(some.getLast());
      Instant now = Instant.now();
      List<Entry> entries = some.stream().map(event -> event.entry(club, now)).toList();
      AppendOutcome outcome = journal.append(entries, APPEND_MAX);
      if (!(outcome instanceof AppendOutcome.Appended)) {
        throw new IllegalStateException("not appended: " + outcome);
      }
    }
  }

  /** Nobody else checks what goes past the door, and another form would be another content. */
  private static void requireCanonical(Sending event) {
    try {
      String canonical = CanonicalJson.of(JSON.readTree(event.data()));
      if (!canonical.equals(event.data())) {
        throw new IllegalStateException(event.data() + " is not canonical: " + canonical);
      }
    } catch (IOException e) {
      throw new IllegalStateException("no JSON: " + event.data(), e);
    }
  }
}
