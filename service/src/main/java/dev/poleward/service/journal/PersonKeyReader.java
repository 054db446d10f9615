package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.poleward.service.journal.PersonKeyTopic.WrappedKey;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.common.KafkaException;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.errors.InterruptException;
import org.apache.kafka.common.errors.WakeupException;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Reads the topic of wrapped keys from its beginning, for ever, on a thread of its own, and says
 * when a nudge is due. Other threads wait for how far it has come.
 */
final class PersonKeyReader {

  /** Key of the records that are written only so that a segment is closed. */
  static final String NUDGE = "-/roll";

  private static final Logger LOG = LoggerFactory.getLogger(PersonKeyReader.class);
  private static final Duration POLL = Duration.ofMillis(250);
  private static final TopicPartition PARTITION = new TopicPartition(JournalTopics.PERSON_KEYS, 0);

  private final KafkaConsumer<byte @Nullable [], byte @Nullable []> consumer;
  private final Consumer<WrappedKey> receiver;
  private final Runnable nudge;
  private final RollNudges nudges;
  private final Thread thread;
  private volatile boolean stopping;
  private volatile boolean hurry;

  private final ReentrantLock lock = new ReentrantLock();
  private final Condition moved = lock.newCondition();
  private long position;
  private @Nullable Exception broken;

  PersonKeyReader(
      KafkaConnection connection, Duration lag, Consumer<WrappedKey> receiver, Runnable nudge) {
    var properties = new HashMap<>(connection.clientProperties("poleward-person-keys-reader"));
    properties.put("enable.auto.commit", false);
    properties.put("allow.auto.create.topics", false);
    properties.put("auto.offset.reset", "none");
    properties.put("isolation.level", "read_uncommitted");
    properties.put("max.poll.records", 1_000);
    properties.put("max.partition.fetch.bytes", 1 << 20);
    properties.put("fetch.max.bytes", 1 << 20);
    this.consumer =
        new KafkaConsumer<>(properties, new ByteArrayDeserializer(), new ByteArrayDeserializer());
    this.receiver = receiver;
    this.nudge = nudge;
    this.nudges = new RollNudges(lag);
    this.thread = Thread.ofPlatform().name("person-keys").daemon().unstarted(this::run);
  }

  /** Whether it has the form of a key's name, {@code club/person/keyId}. */
  static boolean isNameOfAKey(String name) {
    int first = name.indexOf('/');
    return first > 0 && name.indexOf('/', first + 1) > first + 1 && !name.endsWith("/");
  }

  void start() {
    thread.start();
  }

  /** Writes a nudge now if there is any use in one: what was read may be old enough already. */
  void hurryNudge() {
    hurry = true;
  }

  /**
   * Returns once the receiver has had all records before an offset.
   *
   * @throws JournalException when that did not come about before {@code giveUpAtNanos}, or the
   *     topic cannot be read
   */
  void awaitPosition(long offset, long giveUpAtNanos) {
    lock.lock();
    try {
      while (position < offset) {
        if (broken != null) {
          throw new JournalException("The topic of wrapped keys cannot be read.", broken);
        }
        long left = giveUpAtNanos - System.nanoTime();
        if (left <= 0) {
          throw new JournalException("The topic of wrapped keys was not read in time.");
        }
        var unused = moved.await(left, TimeUnit.NANOSECONDS);
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new JournalException("Interrupted while wrapped keys were read.", interrupted);
    } finally {
      lock.unlock();
    }
  }

  void stop(Duration wait) {
    stopping = true;
    consumer.wakeup();
    try {
      thread.join(wait);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private void run() {
    try (consumer) {
      consumer.assign(List.of(PARTITION));
      consumer.seek(PARTITION, 0);
      while (!stopping) {
        for (var record : consumer.poll(POLL)) {
          receive(record);
        }
        // Asked of the consumer, since the last offsets before it may have been compacted away.
        moveTo(consumer.position(PARTITION));
        nudgeIfDue();
      }
      fail(new JournalException("The service is stopping."));
    } catch (WakeupException | InterruptException stopped) {
      fail(stopped);
    } catch (RuntimeException failed) {
      LOG.error("The topic of wrapped keys is read no further", failed);
      fail(failed);
    }
  }

  private void receive(ConsumerRecord<byte @Nullable [], byte @Nullable []> record) {
    byte[] key = record.key();
    var name = key == null ? "" : new String(key, UTF_8);
    boolean isNudge = name.equals(NUDGE);
    nudges.seen(record.timestamp(), isNudge, System.nanoTime());
    if (isNudge) {
      return;
    }
    if (!isNameOfAKey(name)) {
      LOG.warn("Passed over what is no wrapped key, at offset {}", record.offset());
      return;
    }
    byte[] value = record.value();
    boolean destroyed = value == null || value.length == 0;
    receiver.accept(new WrappedKey(name, destroyed ? null : new String(value, UTF_8)));
  }

  private void nudgeIfDue() {
    if (hurry) {
      hurry = false;
      nudges.hurry(System.nanoTime());
    }
    if (nudges.isDue(System.nanoTime())) {
      try {
        nudge.run();
      } catch (KafkaException | IllegalStateException refused) {
        LOG.warn("Could not have a segment of the wrapped keys closed yet", refused);
      }
    }
  }

  private void moveTo(long reached) {
    lock.lock();
    try {
      position = reached;
      moved.signalAll();
    } finally {
      lock.unlock();
    }
  }

  private void fail(Exception why) {
    lock.lock();
    try {
      broken = why;
      moved.signalAll();
    } finally {
      lock.unlock();
    }
  }
}
