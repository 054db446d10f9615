package dev.poleward.load.drill;

import dev.poleward.load.training.ClubHistory;
import dev.poleward.load.training.Sending;
import dev.poleward.load.training.Session;
import dev.poleward.load.wire.ClubClient;
import dev.poleward.load.wire.Reply;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/**
 * A phone that logs reps of one dog for as long as the service answers, and afterwards sends again
 * what was not answered, as it was. One thread at a time.
 */
final class Writer {

  private static final Instant BEGIN = Instant.parse("2025-03-04T17:00:00Z");
  private static final int AMENDED_OF = 10;
  private static final int PAUSE_MILLIS = 50;

  private final String club;
  private final String accessKey;
  private final String dog;
  private final int batch;
  private final SplittableRandom random;
  private final Session session;
  private final List<Sending> kept = new ArrayList<>();
  private final List<Sending> unanswered = new ArrayList<>();
  private final AtomicLong answers = new AtomicLong();
  private @Nullable Sending lastRep;
  private int refusals;

  /**
   * A writer.
   *
   * @param batch events in a request; 1 for requests without a batch
   */
  Writer(String club, String accessKey, int number, int batch, long seed) {
    this.club = club;
    this.accessKey = accessKey;
    this.dog = ClubHistory.dogName(number);
    this.batch = batch;
    this.random = new SplittableRandom(seed + number);
    this.session = new Session(random, dog, BEGIN.plusSeconds(number));
    unanswered.add(ClubHistory.dog(random, dog, BEGIN));
    unanswered.add(session.opened());
    unanswered.add(session.setup());
  }

  /** Writes until there is no answer any more. */
  void writeUntilCut(int port) throws InterruptedException {
    try (ClubClient client = new ClubClient(port, club, accessKey)) {
      sendAgain(client);
      while (true) {
        for (int i = 0; i < batch; i++) {
          unanswered.add(happening());
        }
        sendAgain(client);
      }
    } catch (IOException e) {
      // The service is gone: what was not answered is still in our hands.
    }
  }

  /**
   * Sends some requests, each again and again until it is answered with a success.
   *
   * @return the longest that one of them took
   */
  Duration write(int port, int requests) throws IOException, InterruptedException {
    long longestNanos = 0;
    try (ClubClient client = new ClubClient(port, club, accessKey)) {
      sendAgain(client);
      for (int i = 0; i < requests; i++) {
        for (int j = 0; j < batch; j++) {
          unanswered.add(happening());
        }
        long begun = System.nanoTime();
        sendAgain(client);
        longestNanos = Math.max(longestNanos, System.nanoTime() - begun);
      }
    }
    return Duration.ofNanos(longestNanos);
  }

  /** Sends what was not answered, and nothing else. */
  void finish(int port) throws IOException, InterruptedException {
    try (ClubClient client = new ClubClient(port, club, accessKey)) {
      sendAgain(client);
    }
  }

  private Sending happening() {
    if (lastRep != null && random.nextInt(AMENDED_OF) == 0) {
      return session.amended(lastRep);
    }
    lastRep = session.rep();
    return lastRep;
  }

  private void sendAgain(ClubClient client) throws IOException, InterruptedException {
    while (!unanswered.isEmpty()) {
      List<Sending> some = List.copyOf(unanswered.subList(0, Math.min(batch, unanswered.size())));
      Reply reply =
          batch == 1 ? client.send(some.getFirst().body()) : client.sendBatch(Sending.bodyOf(some));
      if (isKept(reply, some.size())) {
        kept.addAll(some);
        unanswered.subList(0, some.size()).clear();
        answers.incrementAndGet();
      } else if (reply.status() == 503) {
        refusals++;
        Thread.sleep(PAUSE_MILLIS);
      } else {
        throw new IllegalStateException("neither kept nor put off: " + reply);
      }
    }
  }

  private boolean isKept(Reply reply, int events) {
    return batch == 1 ? reply.isOk() : reply.isOk() && ClubClient.allKept(reply.json(), events);
  }

  String dog() {
    return dog;
  }

  /** What was answered with a success. */
  List<Sending> kept() {
    return kept;
  }

  /** What was sent, or was about to be, and not answered. */
  List<Sending> unanswered() {
    return unanswered;
  }

  /** How many requests were answered; may be read by any thread. */
  long answers() {
    return answers.get();
  }

  /** How often it was told to come again. */
  int refusals() {
    return refusals;
  }
}
