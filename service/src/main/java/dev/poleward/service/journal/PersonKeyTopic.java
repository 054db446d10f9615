package dev.poleward.service.journal;

import java.time.Duration;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The compacted topic of people's wrapped keys. Order of records is the same for every reader. Safe
 * for use by many threads.
 */
public interface PersonKeyTopic extends AutoCloseable {

  /**
   * A wrapped key, or its destruction.
   *
   * @param name whose key it is, {@code club/person/keyId}
   * @param wrapped the key under the master key, base64url; null once destroyed
   */
  record WrappedKey(String name, @Nullable String wrapped) {}

  /**
   * Begins to give every record, from the first on, to {@code receiver}, on a thread of its own.
   *
   * @throws JournalException when the topic as it is now was not read within {@code wait}
   */
  void follow(Consumer<WrappedKey> receiver, Duration wait);

  /**
   * Appends and returns once the record is durable and {@code receiver} has had it, with all before
   * it.
   *
   * @throws JournalException when that did not happen within {@code wait}
   */
  void append(WrappedKey key, Duration wait);

  /** Returns once {@code receiver} has had all that was in the topic when this was called. */
  void catchUp(Duration wait);

  /**
   * Longest time from a destruction to the moment when no copy is left on any disk of the broker.
   */
  Duration lastCopyGoneWithin();

  @Override
  void close();
}
