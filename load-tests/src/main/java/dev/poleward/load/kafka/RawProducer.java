package dev.poleward.load.kafka;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.atomic.LongAdder;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.NewTopic;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.jspecify.annotations.Nullable;

/**
 * The most that a broker takes from one idempotent producer into a topic that is synced to disk
 * with every batch: what the service's own writes are held against. For one thread.
 */
public final class RawProducer implements AutoCloseable {

  private static final String TOPIC = "raw-yardstick";
  private static final int PARTITIONS = 12;
  private static final int VALUE_BYTES = 300;
  private static final int VALUES = 1_000;

  /** How the producer gathers records. */
  public enum Batching {
    /** One request in flight, no lingering; batches of 16 KiB, as the client has it. */
    ONE_IN_FLIGHT(Map.of("linger.ms", 0, "max.in.flight.requests.per.connection", 1)),
    /** The same with batches of 256 KiB, as the service's journal has it. */
    ONE_IN_FLIGHT_LARGE(
        Map.of(
            "linger.ms", 0, "max.in.flight.requests.per.connection", 1, "batch.size", 256 << 10)),
    /** The client's own defaults. */
    DEFAULTS(Map.of());

    private final Map<String, Object> properties;

    Batching(Map<String, Object> properties) {
      this.properties = properties;
    }
  }

  private final String kafka;
  private final Admin admin;
  private final byte[][] values = new byte[VALUES][VALUE_BYTES];

  /** Makes the topic. */
  public RawProducer(String kafka) throws InterruptedException {
    this.kafka = kafka;
    this.admin = Admin.create(Map.of("bootstrap.servers", kafka));
    SplittableRandom random = new SplittableRandom(1);
    for (byte[] value : values) {
      random.nextBytes(value);
    }
    try {
      admin
          .createTopics(
              List.of(
                  new NewTopic(TOPIC, PARTITIONS, (short) 1)
                      .configs(Map.of("flush.messages", "1"))))
          .all()
          .get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("no topic to measure with", e.getCause());
    }
  }

  /**
   * Sends as fast as it goes.
   *
   * @return records acknowledged a second
   */
  public double perSecond(Batching batching, Duration time) {
    Map<String, Object> properties = new HashMap<>(batching.properties);
    properties.put("bootstrap.servers", kafka);
    properties.put("acks", "all");
    properties.put("enable.idempotence", true);
    LongAdder acknowledged = new LongAdder();
    AtomicReference<@Nullable Exception> failed = new AtomicReference<>();
    long begun = System.nanoTime();
    long end = begun + time.toNanos();
    try (KafkaProducer<byte[], byte[]> producer =
        new KafkaProducer<>(properties, new ByteArraySerializer(), new ByteArraySerializer())) {
      for (int i = 0; System.nanoTime() < end; i = (i + 1) % (VALUES * PARTITIONS)) {
        var unused =
            producer.send(
                new ProducerRecord<>(TOPIC, i % PARTITIONS, null, values[i % VALUES]),
                (_, exception) -> {
                  if (exception == null) {
                    acknowledged.increment();
                  } else {
                    failed.set(exception);
                  }
                });
      }
      producer.flush();
    }
    double seconds = (System.nanoTime() - begun) / 1e9;
    Exception why = failed.get();
    if (why != null) {
      throw new IllegalStateException("not all was acknowledged", why);
    }
    return acknowledged.sum() / seconds;
  }

  /** Deletes the topic. */
  @Override
  public void close() {
    var unused = admin.deleteTopics(List.of(TOPIC));
    admin.close(Duration.ofSeconds(10));
  }
}
