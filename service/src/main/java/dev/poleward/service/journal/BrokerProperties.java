package dev.poleward.service.journal;

import java.nio.file.Path;
import java.util.Properties;

/**
 * How the broker inside this process is configured: one node that is broker and controller, for one
 * client, modest in memory and threads.
 */
final class BrokerProperties {

  static final int NODE_ID = 1;
  static final String CONTROLLER = "CONTROLLER";

  private static final String CLIENT = "CLIENT";

  private BrokerProperties() {}

  static Properties of(Path folder, int clientPort, int controllerPort, EmbeddedSettings settings) {
    var properties = new Properties();
    // One voter that is known by configuration: its port may change from start to start.
    properties.put("process.roles", "broker,controller");
    properties.put("node.id", text(NODE_ID));
    properties.put("controller.quorum.voters", NODE_ID + "@127.0.0.1:" + controllerPort);
    properties.put(
        "listeners",
        "%s://127.0.0.1:%d,%s://127.0.0.1:%d"
            .formatted(CLIENT, clientPort, CONTROLLER, controllerPort));
    properties.put("advertised.listeners", CLIENT + "://127.0.0.1:" + clientPort);
    properties.put(
        "listener.security.protocol.map", CLIENT + ":PLAINTEXT," + CONTROLLER + ":PLAINTEXT");
    properties.put("controller.listener.names", CONTROLLER);
    properties.put("inter.broker.listener.name", CLIENT);
    properties.put("log.dirs", folder.toString());

    properties.put("auto.create.topics.enable", "false");
    properties.put("default.replication.factor", "1");
    properties.put("min.insync.replicas", "1");
    properties.put("offsets.topic.num.partitions", "1");
    properties.put("offsets.topic.replication.factor", "1");
    properties.put("transaction.state.log.num.partitions", "1");
    properties.put("transaction.state.log.replication.factor", "1");
    properties.put("transaction.state.log.min.isr", "1");
    properties.put("share.coordinator.state.topic.num.partitions", "1");
    properties.put("share.coordinator.state.topic.replication.factor", "1");
    properties.put("share.coordinator.state.topic.min.isr", "1");
    properties.put("group.initial.rebalance.delay.ms", "0");

    // What was flushed is noted every second, so that a start after a kill reads little again.
    properties.put("log.flush.offset.checkpoint.interval.ms", "1000");
    properties.put("log.index.size.max.bytes", text(1 << 20));
    properties.put("num.recovery.threads.per.data.dir", "2");
    properties.put("log.cleaner.backoff.ms", text(settings.keyTiming().cleanerPause().toMillis()));
    properties.put("log.cleaner.threads", "1");
    properties.put("log.cleaner.dedupe.buffer.size", text(8 << 20));
    properties.put("log.cleaner.io.buffer.size", text(512 << 10));

    // Nobody watches whether the quorum of one is alive; do not write twice a second to show it.
    properties.put("metadata.max.idle.interval.ms", "0");

    properties.put("num.network.threads", "2");
    properties.put("num.io.threads", "8");
    properties.put("background.threads", "2");
    properties.put("num.replica.fetchers", "1");
    properties.put("group.coordinator.threads", "1");
    properties.put("share.coordinator.threads", "1");
    properties.put("queued.max.requests", "100");
    properties.put("socket.request.max.bytes", text(16 << 20));
    properties.put("metric.reporters", "");

    // After a kill the broker is let in again only when its former session is over.
    properties.put("broker.heartbeat.interval.ms", "200");
    properties.put("broker.session.timeout.ms", "1500");
    return properties;
  }

  private static String text(long number) {
    return Long.toString(number);
  }
}
