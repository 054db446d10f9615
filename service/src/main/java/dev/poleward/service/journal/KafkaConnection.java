package dev.poleward.service.journal;

import java.util.HashMap;
import java.util.Map;

/**
 * Where a Kafka cluster is and how to get in.
 *
 * @param bootstrapServers one or more {@code host:port}, with commas between
 * @param security client properties of the cluster's door, each beginning with {@code security.},
 *     {@code sasl.} or {@code ssl.}; empty for a cluster without locks
 */
public record KafkaConnection(String bootstrapServers, Map<String, String> security) {

  /** A request that takes longer than this has failed. */
  static final int REQUEST_MILLIS_MAX = 5_000;

  /**
   * Keeps the properties from changing.
   *
   * @throws IllegalArgumentException when there is no server, or a property is about something else
   */
  public KafkaConnection {
    if (bootstrapServers.isBlank()) {
      throw new IllegalArgumentException("a Kafka cluster needs at least one host:port");
    }
    for (var name : security.keySet()) {
      if (!name.startsWith("security.") && !name.startsWith("sasl.") && !name.startsWith("ssl.")) {
        throw new IllegalArgumentException(
            name + " is not a client property that begins with security., sasl. or ssl.");
      }
    }
    security = Map.copyOf(security);
  }

  /** A cluster that lets everybody in. */
  public static KafkaConnection open(String bootstrapServers) {
    return new KafkaConnection(bootstrapServers, Map.of());
  }

  /** What every client of this cluster is configured with, whatever it is for. */
  Map<String, Object> clientProperties(String clientId) {
    var properties = new HashMap<String, Object>(security);
    properties.put("bootstrap.servers", bootstrapServers);
    properties.put("client.id", clientId);
    properties.put("request.timeout.ms", REQUEST_MILLIS_MAX);
    properties.put("reconnect.backoff.ms", 50);
    properties.put("reconnect.backoff.max.ms", 1_000);
    properties.put("retry.backoff.ms", 50);
    properties.put("retry.backoff.max.ms", 500);
    properties.put("enable.metrics.push", false);
    properties.put("metric.reporters", "");
    return properties;
  }
}
