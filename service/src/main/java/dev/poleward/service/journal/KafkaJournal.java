package dev.poleward.service.journal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.KafkaException;
import org.apache.kafka.common.errors.TimeoutException;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The journal in Kafka's topic {@code journal}. Safe for use by many threads; an append blocks its
 * own.
 *
 * <p>A few lanes lead to the broker, each with its share of the partitions and one request on its
 * way at a time. What arrives meanwhile goes together in the next, so that many appends share one
 * wait for the disk, and none waits for company.
 */
public final class KafkaJournal implements Journal {

  /** Size of the largest entry with all its headers, in bytes. */
  public static final int ENTRY_BYTES_MAX = 5 << 20;

  private static final Logger LOG = LoggerFactory.getLogger(KafkaJournal.class);

  /**
   * Producers, each with its share of the partitions. A broker takes a connection's partitions one
   * after the other to the disk, so one connection would wait for twelve.
   */
  private static final int LANES = 4;

  private static final int ENTRIES_MAX = 1_000;
  private static final int BATCH_BYTES = 256 << 10;
  private static final int DELIVERY_MILLIS_MAX = 10_000;
  private static final int SEND_BLOCKS_MILLIS_MAX = 250;
  private static final Duration CONNECT_MAX = Duration.ofSeconds(15);
  private static final Duration CLOSE_MAX = Duration.ofSeconds(10);
  private static final Duration RETRY_SOON = Duration.ofSeconds(1);
  private static final Duration RETRY_WHEN_DISK_HAS_ROOM = Duration.ofSeconds(60);

  private final KafkaConnection connection;
  private final List<KafkaProducer<byte[], byte[]>> lanes = new ArrayList<>();
  private final PartitionEnds ends;
  private final QueueLimits limits;
  private final QueueRoom room;
  private final DiskSpace disk;
  private volatile boolean closed;

  private KafkaJournal(KafkaConnection connection, QueueLimits limits, DiskSpace disk) {
    this.connection = connection;
    this.disk = disk;
    this.limits = limits;
    this.room = new QueueRoom(limits);
    for (int lane = 0; lane < LANES; lane++) {
      lanes.add(
          new KafkaProducer<>(
              producerProperties(connection, limits, lane),
              new ByteArraySerializer(),
              new ByteArraySerializer()));
    }
    this.ends = new PartitionEnds(connection, JournalTopics.JOURNAL, PARTITIONS);
  }

  /**
   * Connects to a cluster whose topics {@link JournalTopics} has seen to.
   *
   * @throws JournalException when the topic does not answer within 15 s
   */
  public static KafkaJournal connect(
      KafkaConnection connection, QueueLimits limits, DiskSpace disk) {
    var journal = new KafkaJournal(connection, limits, disk);
    try {
      journal.awaitTopic();
      return journal;
    } catch (RuntimeException unreachable) {
      journal.close();
      throw unreachable;
    }
  }

  @Override
  public AppendOutcome append(List<Entry> entries, Duration wait) {
    requireOneClub(entries);
    if (closed) {
      return new AppendOutcome.Unavailable("the service is stopping", RETRY_SOON);
    }
    if (disk.nearlyFull()) {
      return new AppendOutcome.DiskNearlyFull(RETRY_WHEN_DISK_HAS_ROOM);
    }
    var records = new ArrayList<ProducerRecord<byte[], byte[]>>(entries.size());
    long bytes = 0;
    for (var entry : entries) {
      var record = EntryWriting.write(JournalTopics.JOURNAL, entry);
      int size = EntryWriting.sizeOf(record);
      if (size > ENTRY_BYTES_MAX) {
        throw new IllegalArgumentException(
            "an entry of %d bytes is more than %d".formatted(size, ENTRY_BYTES_MAX));
      }
      records.add(record);
      bytes += size;
    }
    if (bytes > limits.bytesMax()) {
      throw new IllegalArgumentException(
          "an append of %d bytes is more than ever fits into the queue".formatted(bytes));
    }
    int taken = (int) bytes;
    if (!room.take(records.size(), taken)) {
      return new AppendOutcome.QueueFull(RETRY_SOON);
    }
    var acknowledgement =
        new Acknowledgement(records.size(), () -> room.giveBack(records.size(), taken));
    send(records, acknowledgement);
    return acknowledgement.await(wait);
  }

  private void send(List<ProducerRecord<byte[], byte[]>> records, Acknowledgement acknowledgement) {
    var lane = lanes.get(records.getFirst().partition() % LANES);
    for (int at = 0; at < records.size(); at++) {
      if (acknowledgement.hasFailed()) {
        acknowledgement.notSent(at);
        return;
      }
      try {
        var unused = lane.send(records.get(at), acknowledgement.ofEntry(at));
      } catch (KafkaException | IllegalStateException refused) {
        acknowledgement.refused(refused);
        acknowledgement.notSent(at);
        return;
      }
    }
  }

  @Override
  public int partitionOf(String club) {
    return Partitioning.partitionOf(club);
  }

  @Override
  public long[] ends(Duration wait) {
    return ends.now(wait);
  }

  @Override
  public Tail tail(List<Integer> partitions, long[] from) {
    return new KafkaTail(connection, partitions, from);
  }

  /** Waits for what is queued, at most 10 s. */
  @Override
  public void close() {
    closed = true;
    lanes.forEach(lane -> lane.close(CLOSE_MAX));
    ends.close();
  }

  /** Every lane asks for itself, so that no append has to wait for its first answer. */
  private void awaitTopic() {
    long giveUpAt = System.nanoTime() + CONNECT_MAX.toNanos();
    for (var lane : lanes) {
      while (!hasTopic(lane)) {
        if (System.nanoTime() - giveUpAt >= 0) {
          throw new JournalException(
              "Kafka at %s does not answer.".formatted(connection.bootstrapServers()));
        }
      }
    }
  }

  private boolean hasTopic(KafkaProducer<byte[], byte[]> lane) {
    try {
      int found = lane.partitionsFor(JournalTopics.JOURNAL).size();
      if (found != PARTITIONS) {
        throw new JournalException(
            "The topic %s at %s has %d partitions instead of %d."
                .formatted(
                    JournalTopics.JOURNAL, connection.bootstrapServers(), found, PARTITIONS));
      }
      return true;
    } catch (TimeoutException notYet) {
      LOG.debug("Waiting for {}", connection.bootstrapServers(), notYet);
      return false;
    } catch (KafkaException refused) {
      throw new JournalException(
          "Kafka at %s does not let us in.".formatted(connection.bootstrapServers()), refused);
    }
  }

  private static void requireOneClub(List<Entry> entries) {
    if (entries.isEmpty() || entries.size() > ENTRIES_MAX) {
      throw new IllegalArgumentException(
          "%d entries instead of 1 to %d".formatted(entries.size(), ENTRIES_MAX));
    }
    var club = entries.getFirst().club();
    for (var entry : entries) {
      if (!entry.club().equals(club)) {
        throw new IllegalArgumentException("entries of two clubs in one append");
      }
    }
  }

  private static Map<String, Object> producerProperties(
      KafkaConnection connection, QueueLimits limits, int lane) {
    var properties = new HashMap<>(connection.clientProperties("poleward-journal-" + lane));
    properties.put("acks", "all");
    properties.put("enable.idempotence", true);
    properties.put("max.in.flight.requests.per.connection", 1);
    properties.put("linger.ms", 0);
    properties.put("batch.size", BATCH_BYTES);
    properties.put("max.request.size", ENTRY_BYTES_MAX + BATCH_BYTES);
    // Twice the queue, since a large entry leaves most of a batch's buffer empty.
    properties.put("buffer.memory", 2L * limits.bytesMax() + 2L * PARTITIONS * BATCH_BYTES);
    properties.put("delivery.timeout.ms", DELIVERY_MILLIS_MAX);
    properties.put("max.block.ms", SEND_BLOCKS_MILLIS_MAX);
    properties.put("metadata.max.idle.ms", Duration.ofDays(7).toMillis());
    properties.put("compression.type", "none");
    return properties;
  }
}
