package dev.poleward.service.journal;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.ListOffsetsOptions;
import org.apache.kafka.clients.admin.ListOffsetsResult.ListOffsetsResultInfo;
import org.apache.kafka.clients.admin.OffsetSpec;
import org.apache.kafka.common.TopicPartition;
import org.jspecify.annotations.Nullable;

/**
 * Where the partitions of a topic end. Safe for use by many threads.
 *
 * <p>One question is on its way at a time; who comes meanwhile shares the next one. An answer to a
 * question asked earlier would not do: it may be older than what the caller has seen acknowledged.
 */
final class PartitionEnds implements AutoCloseable {

  private static final int ASK_MILLIS_MAX = 5_000;

  private final Admin admin;
  private final String servers;
  private final String topic;
  private final int partitions;
  private final Map<TopicPartition, OffsetSpec> question = new HashMap<>();

  private boolean asking;
  private @Nullable CompletableFuture<long[]> next;

  PartitionEnds(KafkaConnection connection, String topic, int partitions) {
    this.servers = connection.bootstrapServers();
    this.topic = topic;
    this.partitions = partitions;
    for (int partition = 0; partition < partitions; partition++) {
      question.put(new TopicPartition(topic, partition), OffsetSpec.latest());
    }
    var properties = new HashMap<>(connection.clientProperties("poleward-ends-" + topic));
    properties.put("default.api.timeout.ms", ASK_MILLIS_MAX);
    this.admin = Admin.create(properties);
  }

  /**
   * The ends as they are now or later.
   *
   * @throws JournalException when they cannot be had within {@code wait}
   */
  long[] now(Duration wait) {
    try {
      return answer().get(wait.toNanos(), TimeUnit.NANOSECONDS).clone();
    } catch (TimeoutException late) {
      throw new JournalException(
          "Kafka at %s did not say within %d ms where %s ends."
              .formatted(servers, wait.toMillis(), topic),
          late);
    } catch (ExecutionException failed) {
      throw new JournalException(
          "Kafka at %s cannot say where %s ends.".formatted(servers, topic),
          failed.getCause() == null ? failed : failed.getCause());
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw new JournalException("Interrupted while asking where " + topic + " ends.", stopping);
    }
  }

  private CompletableFuture<long[]> answer() {
    CompletableFuture<long[]> answer;
    synchronized (this) {
      if (asking) {
        if (next == null) {
          next = new CompletableFuture<>();
        }
        return next;
      }
      asking = true;
      answer = new CompletableFuture<>();
    }
    ask(answer);
    return answer;
  }

  private void ask(CompletableFuture<long[]> answer) {
    try {
      admin
          .listOffsets(question, new ListOffsetsOptions().timeoutMs(ASK_MILLIS_MAX))
          .all()
          .whenComplete((offsets, failure) -> answered(answer, offsets, failure));
    } catch (RuntimeException refused) {
      answered(answer, null, refused);
    }
  }

  private void answered(
      CompletableFuture<long[]> answer,
      @Nullable Map<TopicPartition, ListOffsetsResultInfo> offsets,
      @Nullable Throwable failure) {
    CompletableFuture<long[]> waiting;
    synchronized (this) {
      waiting = next;
      next = null;
      asking = waiting != null;
    }
    if (waiting != null) {
      ask(waiting);
    }
    if (offsets == null || failure != null) {
      answer.completeExceptionally(failure == null ? new IllegalStateException() : failure);
      return;
    }
    var ends = new long[partitions];
    offsets.forEach((partition, end) -> ends[partition.partition()] = end.offset());
    answer.complete(ends);
  }

  @Override
  public void close() {
    admin.close(Duration.ofSeconds(1));
  }
}
