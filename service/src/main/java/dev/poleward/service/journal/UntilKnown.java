package dev.poleward.service.journal;

import java.time.Duration;
import org.apache.kafka.common.errors.UnknownTopicOrPartitionException;

/**
 * Asks about a topic again for as long as a broker does not know it: a new topic is known to all
 * within moments of being created, and not at once. Immutable; safe for use by many threads.
 *
 * @param giveUpAfter from the first time of asking; what is under way then is still waited for
 * @param pause between one time of asking and the next
 */
record UntilKnown(Duration giveUpAfter, Duration pause) {

  /** What is asked; whether a broker knows the topic shows in the cause of what it throws. */
  @FunctionalInterface
  interface Question<T, E extends Exception> {
    T ask() throws E, InterruptedException;
  }

  /**
   * The answer, or the first failure that has another cause, or the last one.
   *
   * @throws InterruptedException when the thread is to stop
   */
  <T, E extends Exception> T answer(Question<T, E> question) throws E, InterruptedException {
    long giveUpAt = System.nanoTime() + giveUpAfter.toNanos();
    while (true) {
      try {
        return question.ask();
      } catch (Exception failed) {
        if (!(failed.getCause() instanceof UnknownTopicOrPartitionException)
            || System.nanoTime() - giveUpAt >= 0) {
          throw failed;
        }
        Thread.sleep(pause);
      }
    }
  }
}
