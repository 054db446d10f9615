package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.KafkaException;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.jspecify.annotations.Nullable;

/**
 * Wrapped keys in Kafka's compacted topic {@code person-keys}. Safe for use by many threads; one of
 * its own reads the topic and closes its segments in time.
 *
 * <p>A destroyed key is a record without bytes that stays for good, rather than one without a
 * value, which Kafka would forget in the end: a reader may sleep as long as it likes and still
 * learns of it, and "destroyed" is never mistaken for "not there yet".
 */
public final class KafkaPersonKeyTopic implements PersonKeyTopic {

  /** Longest name of a key, in bytes. */
  public static final int NAME_BYTES_MAX = 1_024;

  /** Longest wrapped key, in bytes. */
  public static final int WRAPPED_BYTES_MAX = 16 << 10;

  private static final int PARTITION = 0;
  private static final int DELIVERY_MILLIS_MAX = 10_000;
  private static final int SEND_BLOCKS_MILLIS_MAX = 2_000;
  private static final Duration CLOSE_MAX = Duration.ofSeconds(5);

  private final KafkaConnection connection;
  private final PersonKeyTiming timing;
  private final KafkaProducer<byte[], byte[]> producer;
  private final PartitionEnds ends;
  private @Nullable PersonKeyReader reader;

  private KafkaPersonKeyTopic(KafkaConnection connection, PersonKeyTiming timing) {
    this.connection = connection;
    this.timing = timing;
    this.producer =
        new KafkaProducer<>(
            producerProperties(connection), new ByteArraySerializer(), new ByteArraySerializer());
    this.ends = new PartitionEnds(connection, JournalTopics.PERSON_KEYS, PARTITION + 1);
  }

  /**
   * Connects to a cluster whose topics {@link JournalTopics} has seen to.
   *
   * @param timing with which the topic was created or checked
   */
  public static KafkaPersonKeyTopic connect(KafkaConnection connection, PersonKeyTiming timing) {
    return new KafkaPersonKeyTopic(connection, timing);
  }

  @Override
  public void follow(Consumer<WrappedKey> receiver, Duration wait) {
    PersonKeyReader started;
    synchronized (this) {
      if (reader != null) {
        throw new IllegalStateException("the topic is followed already");
      }
      started = new PersonKeyReader(connection, timing.lag(), receiver, this::nudge);
      reader = started;
    }
    started.start();
    long giveUpAt = System.nanoTime() + wait.toNanos();
    started.awaitPosition(ends.now(wait)[PARTITION], giveUpAt);
    started.hurryNudge();
  }

  @Override
  public void append(WrappedKey key, Duration wait) {
    byte[] name = key.name().getBytes(UTF_8);
    byte[] value = key.wrapped() == null ? new byte[0] : key.wrapped().getBytes(UTF_8);
    if (name.length > NAME_BYTES_MAX
        || value.length > WRAPPED_BYTES_MAX
        || !PersonKeyReader.isNameOfAKey(key.name())
        || (key.wrapped() != null && value.length == 0)) {
      throw new IllegalArgumentException("no wrapped key of a person: " + key.name());
    }
    var following = following();
    long giveUpAt = System.nanoTime() + wait.toNanos();
    try {
      long offset =
          producer
              .send(new ProducerRecord<>(JournalTopics.PERSON_KEYS, PARTITION, name, value))
              .get(wait.toNanos(), TimeUnit.NANOSECONDS)
              .offset();
      following.awaitPosition(offset + 1, giveUpAt);
    } catch (ExecutionException | KafkaException | IllegalStateException refused) {
      throw new JournalException(
          "The topic of wrapped keys refuses to write.",
          refused.getCause() == null ? refused : refused.getCause());
    } catch (TimeoutException late) {
      throw new JournalException(
          "The topic of wrapped keys did not acknowledge within " + wait.toMillis() + " ms.", late);
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw new JournalException("Interrupted while a wrapped key was written.", stopping);
    }
  }

  @Override
  public void catchUp(Duration wait) {
    long giveUpAt = System.nanoTime() + wait.toNanos();
    following().awaitPosition(ends.now(wait)[PARTITION], giveUpAt);
  }

  @Override
  public Duration lastCopyGoneWithin() {
    return timing.lastCopyGoneWithin();
  }

  @Override
  public void close() {
    PersonKeyReader following;
    synchronized (this) {
      following = reader;
    }
    if (following != null) {
      following.stop(CLOSE_MAX);
    }
    producer.close(CLOSE_MAX);
    ends.close();
  }

  private synchronized PersonKeyReader following() {
    if (reader == null) {
      throw new IllegalStateException("the topic is not followed yet");
    }
    return reader;
  }

  /** If it fails the reader asks again: it has not seen it. */
  private void nudge() {
    var unused =
        producer.send(
            new ProducerRecord<>(
                JournalTopics.PERSON_KEYS,
                PARTITION,
                PersonKeyReader.NUDGE.getBytes(UTF_8),
                new byte[] {'.'}));
  }

  private static Map<String, Object> producerProperties(KafkaConnection connection) {
    var properties = new HashMap<>(connection.clientProperties("poleward-person-keys"));
    properties.put("acks", "all");
    properties.put("enable.idempotence", true);
    properties.put("max.in.flight.requests.per.connection", 1);
    properties.put("linger.ms", 0);
    properties.put("buffer.memory", 4L << 20);
    properties.put("delivery.timeout.ms", DELIVERY_MILLIS_MAX);
    properties.put("max.block.ms", SEND_BLOCKS_MILLIS_MAX);
    properties.put("compression.type", "none");
    return properties;
  }
}
