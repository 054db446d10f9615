package dev.poleward.load.kafka;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;

/** The topic of people's wrapped keys, as anybody reads it who gets at the broker. */
public final class WrappedKeys {

  private static final TopicPartition TOPIC = new TopicPartition("person-keys", 0);
  private static final Duration POLL_MAX = Duration.ofMillis(200);

  private WrappedKeys() {}

  /** Every wrapped key that stands, by its name, {@code club/person/keyId}. */
  public static Map<String, String> read(String kafka) {
    Map<String, Object> properties =
        Map.of("bootstrap.servers", kafka, "enable.auto.commit", false);
    Map<String, String> keys = new LinkedHashMap<>();
    try (KafkaConsumer<byte[], byte[]> consumer =
        new KafkaConsumer<>(properties, new ByteArrayDeserializer(), new ByteArrayDeserializer())) {
      consumer.assign(List.of(TOPIC));
      consumer.seekToBeginning(List.of(TOPIC));
      Long end = consumer.endOffsets(List.of(TOPIC)).get(TOPIC);
      if (end == null) {
        throw new IllegalStateException("there is no topic of wrapped keys");
      }
      while (consumer.position(TOPIC) < end) {
        for (ConsumerRecord<byte[], byte[]> record : consumer.poll(POLL_MAX)) {
          String name = new String(record.key(), UTF_8);
          if (record.value() == null) {
            keys.remove(name);
          } else if (name.split("/", -1).length == 3) {
            keys.put(name, new String(record.value(), UTF_8));
          }
        }
      }
    }
    return keys;
  }
}
