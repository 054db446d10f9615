package dev.poleward.service.journal;

import java.time.Duration;
import java.util.Arrays;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.apache.kafka.clients.producer.Callback;
import org.apache.kafka.common.KafkaException;
import org.apache.kafka.common.errors.NotEnoughReplicasAfterAppendException;
import org.apache.kafka.common.errors.NotEnoughReplicasException;
import org.apache.kafka.common.errors.TimeoutException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The broker's answer to one append, entry by entry. The appending thread waits; the producer's
 * thread answers.
 */
final class Acknowledgement {

  private static final Logger LOG = LoggerFactory.getLogger(Acknowledgement.class);
  private static final Duration RETRY_AFTER = Duration.ofSeconds(1);

  private final AtomicReferenceArray<@Nullable Place> places;
  private final AtomicReference<@Nullable Exception> failure = new AtomicReference<>();
  private final AtomicInteger unanswered;
  private final CountDownLatch open;
  private final Runnable whenAllAnswered;

  /**
   * Waits for some answers.
   *
   * @param whenAllAnswered runs once, after the last answer, however late
   */
  Acknowledgement(int entries, Runnable whenAllAnswered) {
    this.places = new AtomicReferenceArray<>(entries);
    this.unanswered = new AtomicInteger(entries);
    this.open = new CountDownLatch(entries);
    this.whenAllAnswered = whenAllAnswered;
  }

  /** Takes the answer for one entry. */
  Callback ofEntry(int at) {
    return (metadata, refused) -> {
      if (refused == null) {
        places.set(at, new Place(metadata.partition(), metadata.offset()));
      } else {
        refused(refused);
      }
      answered();
    };
  }

  /** Notes why the append fails; the first reason counts. */
  void refused(Exception why) {
    failure.compareAndSet(null, why);
  }

  boolean hasFailed() {
    return failure.get() != null;
  }

  /** Counts this entry and all after it as answered. */
  void notSent(int from) {
    for (int at = from; at < places.length(); at++) {
      answered();
    }
  }

  /** The room is free again before the waiter hears of it, who may well come back at once. */
  private void answered() {
    if (unanswered.decrementAndGet() == 0) {
      whenAllAnswered.run();
    }
    open.countDown();
  }

  /** The outcome, once all are answered or the time is over. */
  AppendOutcome await(Duration wait) {
    try {
      if (!open.await(wait.toNanos(), TimeUnit.NANOSECONDS)) {
        return unavailable("the journal did not acknowledge within " + wait.toMillis() + " ms");
      }
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      return unavailable("the service is stopping");
    }
    var refused = failure.get();
    if (refused != null) {
      LOG.warn("The journal refused an append", refused);
      return unavailable(words(refused));
    }
    var appended = new Place[places.length()];
    for (int at = 0; at < appended.length; at++) {
      appended[at] = Objects.requireNonNull(places.get(at));
    }
    return new AppendOutcome.Appended(Arrays.asList(appended));
  }

  private static AppendOutcome unavailable(String why) {
    return new AppendOutcome.Unavailable(why, RETRY_AFTER);
  }

  private static String words(Exception refused) {
    return switch (refused) {
      case TimeoutException _ -> "the journal does not answer";
      case NotEnoughReplicasException _, NotEnoughReplicasAfterAppendException _ ->
          "too few copies of the journal are in reach";
      case KafkaException _ -> "the journal refuses to write";
      default -> "the service is stopping";
    };
  }
}
