package dev.poleward.service.http;

import java.time.Duration;
import java.util.concurrent.Phaser;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Requests under way: what they work with must not be closed under them. Safe for use by many
 * threads.
 */
final class UnderWay {

  /** Longer than any request waits for anything. */
  private static final Duration STOP_MAX = Duration.ofSeconds(15);

  private static final Logger LOG = LoggerFactory.getLogger(UnderWay.class);

  /** One party stands for being open; each request is one more. */
  private final Phaser requests = new Phaser(1);

  private volatile boolean stopping;

  /** Whether a request may begin; one that may must also end. */
  boolean begin() {
    if (stopping) {
      return false;
    }
    requests.register();
    if (stopping) {
      requests.arriveAndDeregister();
      return false;
    }
    return true;
  }

  void end() {
    requests.arriveAndDeregister();
  }

  /** Lets no more begin, and waits until the last has ended. */
  void stop() {
    stopping = true;
    int phase = requests.arriveAndDeregister();
    try {
      requests.awaitAdvanceInterruptibly(phase, STOP_MAX.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      LOG.warn("{} requests did not end within {}", requests.getRegisteredParties(), STOP_MAX);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
