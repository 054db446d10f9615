package dev.poleward.service.journal;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import kafka.server.KafkaConfig;
import kafka.server.KafkaRaftServer;
import org.apache.kafka.common.Uuid;
import org.apache.kafka.common.utils.Time;
import org.apache.kafka.metadata.storage.Formatter;
import org.apache.kafka.server.common.Feature;
import org.apache.kafka.server.common.MetadataVersion;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A Kafka broker inside this process, with its data in one folder, for clients of this machine. For
 * the thread that starts and stops the service.
 *
 * <p>Where its disk fails the broker halts the process: what was acknowledged is on disk, and
 * nothing more will be.
 */
public final class EmbeddedBroker implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(EmbeddedBroker.class);
  private static final int PORT_TRIES_MAX = 5;

  private final KafkaRaftServer server;
  private final KafkaConnection connection;

  private EmbeddedBroker(KafkaRaftServer server, KafkaConnection connection) {
    this.server = server;
    this.connection = connection;
  }

  /**
   * Checks every byte of the journal, starts the broker, and returns once it answers and has its
   * topics.
   *
   * @param folder an existing folder that is the broker's alone
   * @param acknowledged for each partition of the journal, an offset below which all is known to
   *     have been acknowledged; 0 where nothing is known
   * @throws CannotStart when the journal is damaged or shorter than that, the port is taken, or the
   *     folder cannot be used
   */
  public static EmbeddedBroker start(Path folder, EmbeddedSettings settings, long[] acknowledged) {
    if (settings.kafkaPort() != 0 && !isFree(settings.kafkaPort())) {
      throw portTaken(settings.kafkaPort());
    }
    var ends = soundEnds(folder, acknowledged);
    if (!Files.exists(folder.resolve("meta.properties"))) {
      format(folder);
    }
    var broker = startOnFreePorts(folder, settings);
    try {
      boolean hasEntries = ends.stream().anyMatch(end -> end > 0);
      JournalTopics.prepareEmbedded(broker.connection, settings.keyTiming(), hasEntries);
      broker.requireAtLeast(ends);
      return broker;
    } catch (RuntimeException unusable) {
      broker.close();
      throw unusable;
    }
  }

  private static List<Long> soundEnds(Path folder, long[] acknowledged) {
    try {
      return switch (SegmentCheck.check(folder, acknowledged)) {
        case SegmentCheck.Outcome.Sound sound -> {
          sound.torn().forEach(torn -> LOG.warn("Cut off: {}", torn));
          yield sound.ends();
        }
        case SegmentCheck.Outcome.Damaged damaged ->
            throw new CannotStart(
                """
                The journal in %s is damaged:
                  %s
                Nothing was changed. Restore the folder from a backup, or the disk from which it \
                was read."""
                    .formatted(folder, String.join("\n  ", damaged.faults())));
      };
    } catch (IOException unreadable) {
      throw new CannotStart(
          "The journal in %s cannot be read: %s".formatted(folder, unreadable.getMessage()),
          unreadable);
    }
  }

  /** The broker must have found what the check found. */
  private void requireAtLeast(List<Long> ends) {
    try (var found = new PartitionEnds(connection, JournalTopics.JOURNAL, ends.size())) {
      long[] now = found.now(Duration.ofSeconds(30));
      for (int partition = 0; partition < now.length; partition++) {
        if (now[partition] < ends.get(partition)) {
          throw new CannotStart(
              "The broker ends partition %d of the journal at %d, but its files held %d entries."
                  .formatted(partition, now[partition], ends.get(partition)));
        }
      }
    } catch (JournalException unreachable) {
      throw new CannotStart("The broker started but does not answer.", unreachable);
    }
  }

  /** How clients get in. */
  public KafkaConnection connection() {
    return connection;
  }

  /** Stops in order: all is on disk and noted as such when this returns. */
  @Override
  public void close() {
    server.shutdown();
    server.awaitShutdown();
  }

  private static EmbeddedBroker startOnFreePorts(Path folder, EmbeddedSettings settings) {
    for (int tries = 1; ; tries++) {
      int[] free = freePorts();
      int controllerPort = free[0];
      int clientPort = settings.kafkaPort() == 0 ? free[1] : settings.kafkaPort();
      var config =
          KafkaConfig.fromProps(
              BrokerProperties.of(folder, clientPort, controllerPort, settings), false);
      var server = new KafkaRaftServer(config, Time.SYSTEM);
      try {
        server.startup();
        return new EmbeddedBroker(server, KafkaConnection.open("127.0.0.1:" + clientPort));
      } catch (RuntimeException failed) {
        server.shutdown();
        if (!isPortTaken(failed)) {
          throw new CannotStart("The broker did not start on " + folder + ".", failed);
        }
        if (settings.kafkaPort() != 0 && !isFree(settings.kafkaPort())) {
          throw portTaken(settings.kafkaPort());
        }
        if (tries == PORT_TRIES_MAX) {
          throw new CannotStart("No free port was found on this machine.", failed);
        }
        LOG.info("A port was taken by somebody else meanwhile, trying another");
      }
    }
  }

  private static CannotStart portTaken(int port) {
    return new CannotStart(
        "Port %d of this machine is in use. Stop what uses it, or choose another with --kafka-port."
            .formatted(port));
  }

  private static boolean isPortTaken(Throwable failed) {
    for (var cause = failed; cause != null; cause = cause.getCause()) {
      if (cause instanceof BindException) {
        return true;
      }
    }
    return false;
  }

  private static boolean isFree(int port) {
    try (var socket = new ServerSocket()) {
      socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
      return true;
    } catch (IOException taken) {
      return false;
    }
  }

  /** Two, held at the same time, or the second may be the first again. */
  private static int[] freePorts() {
    try (var one = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        var other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return new int[] {one.getLocalPort(), other.getLocalPort()};
    } catch (IOException none) {
      throw new CannotStart("No free port was found on this machine.", none);
    }
  }

  private static void format(Path folder) {
    try {
      new Formatter()
          .setPrintStream(
              new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8))
          .setSupportedFeatures(Feature.PRODUCTION_FEATURES)
          .setReleaseVersion(MetadataVersion.latestProduction())
          // With one broker there is nobody to be eligible; its partitions keep it as their leader.
          .setFeatureLevel("eligible.leader.replicas.version", (short) 0)
          .setNodeId(BrokerProperties.NODE_ID)
          .setClusterId(Uuid.randomUuid().toString())
          .setDirectories(List.of(folder.toString()))
          .setMetadataLogDirectory(folder.toString())
          .setControllerListenerName(BrokerProperties.CONTROLLER)
          .setHasDynamicQuorum(false)
          .setIgnoreFormatted(false)
          .run();
    } catch (Exception unusable) {
      throw new CannotStart(
          "The folder " + folder + " cannot be prepared for the journal.", unusable);
    }
  }
}
