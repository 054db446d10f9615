package dev.poleward.service.journal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.apache.kafka.clients.consumer.CloseOptions;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.clients.consumer.OffsetOutOfRangeException;
import org.apache.kafka.common.KafkaException;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.errors.CorruptRecordException;
import org.apache.kafka.common.errors.InterruptException;
import org.apache.kafka.common.errors.WakeupException;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;

/**
 * Reads some partitions of the journal, whatever other readers do. For one thread, except {@link
 * #wakeup}. Holds at most about 8 MiB of records.
 */
final class KafkaTail implements Tail {

  private static final int RECORDS_MAX = 2_000;
  private static final int PARTITION_BYTES_MAX = 1 << 20;
  private static final int FETCH_BYTES_MAX = 4 << 20;
  private static final int IDLE_MILLIS_MAX = 500;

  private final KafkaConsumer<byte[], byte[]> consumer;

  KafkaTail(KafkaConnection connection, List<Integer> partitions, long[] from) {
    var properties = new HashMap<>(connection.clientProperties("poleward-tail"));
    properties.put("enable.auto.commit", false);
    properties.put("allow.auto.create.topics", false);
    // Neither the beginning nor the end would do for an offset that is not there.
    properties.put("auto.offset.reset", "none");
    properties.put("isolation.level", "read_uncommitted");
    properties.put("check.crcs", true);
    properties.put("max.poll.records", RECORDS_MAX);
    properties.put("max.partition.fetch.bytes", PARTITION_BYTES_MAX);
    properties.put("fetch.max.bytes", FETCH_BYTES_MAX);
    properties.put("fetch.max.wait.ms", IDLE_MILLIS_MAX);
    consumer =
        new KafkaConsumer<>(properties, new ByteArrayDeserializer(), new ByteArrayDeserializer());
    var assigned =
        partitions.stream()
            .map(partition -> new TopicPartition(JournalTopics.JOURNAL, partition))
            .toList();
    consumer.assign(assigned);
    assigned.forEach(partition -> consumer.seek(partition, from[partition.partition()]));
  }

  @Override
  public List<JournalRecord> poll(Duration wait) {
    try {
      var fetched = consumer.poll(wait);
      var records = new ArrayList<JournalRecord>(fetched.count());
      for (var partition : fetched.partitions()) {
        for (var record : fetched.records(partition)) {
          records.add(EntryReading.read(record));
        }
      }
      return records;
    } catch (WakeupException woken) {
      return List.of();
    } catch (InterruptException stopping) {
      Thread.currentThread().interrupt();
      return List.of();
    } catch (OffsetOutOfRangeException gone) {
      throw new JournalException(
          "The journal does not reach where reading was to go on, at "
              + gone.offsetOutOfRangePartitions()
              + ". Entries have been lost, or this is another journal.",
          gone);
    } catch (CorruptRecordException damaged) {
      throw new JournalException("A record of the journal is damaged.", damaged);
    } catch (KafkaException broken) {
      var cause = broken.getCause();
      throw new JournalException(
          cause instanceof CorruptRecordException
              ? "A record of the journal is damaged: " + broken.getMessage()
              : "The journal cannot be read: " + broken.getMessage(),
          broken);
    }
  }

  @Override
  public void wakeup() {
    consumer.wakeup();
  }

  @Override
  public void close() {
    consumer.close(CloseOptions.timeout(Duration.ofSeconds(1)));
  }
}
