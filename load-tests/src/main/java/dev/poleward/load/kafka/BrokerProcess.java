package dev.poleward.load.kafka;

import dev.poleward.load.node.ChildProcess;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import org.apache.kafka.metadata.storage.Formatter;
import org.apache.kafka.server.common.Feature;
import org.apache.kafka.server.common.MetadataVersion;

/**
 * One broker of a cluster, in a process of its own: Kafka as it comes, with its own main class. For
 * one thread.
 */
final class BrokerProcess {

  private static final String CONTROLLER = "CONTROLLER";

  private final int id;
  private final Path folder;
  private final Path properties;
  private ChildProcess process;

  private BrokerProcess(int id, Path folder, Path properties) throws IOException {
    this.id = id;
    this.folder = folder;
    this.properties = properties;
    this.process = launched();
  }

  /**
   * Formats a folder and starts a broker on it.
   *
   * @param voters of the quorum, {@code id@host:port,…}
   * @param ports that it listens on: for clients, for controllers
   */
  static BrokerProcess start(Path folder, String clusterId, int id, String voters, int... ports)
      throws IOException {
    Files.createDirectories(folder);
    format(folder, clusterId, id);
    Path file = folder.resolveSibling(folder.getFileName() + ".properties");
    try (Writer writer = Files.newBufferedWriter(file)) {
      properties(folder, id, voters, ports[0], ports[1]).store(writer, null);
    }
    return new BrokerProcess(id, folder, file);
  }

  private static Properties properties(
      Path folder, int id, String voters, int clients, int controllers) {
    Properties properties = new Properties();
    properties.put("process.roles", "broker,controller");
    properties.put("node.id", Integer.toString(id));
    properties.put("controller.quorum.voters", voters);
    properties.put(
        "listeners",
        "PLAINTEXT://127.0.0.1:%d,%s://127.0.0.1:%d".formatted(clients, CONTROLLER, controllers));
    properties.put("advertised.listeners", "PLAINTEXT://127.0.0.1:" + clients);
    properties.put(
        "listener.security.protocol.map", "PLAINTEXT:PLAINTEXT," + CONTROLLER + ":PLAINTEXT");
    properties.put("controller.listener.names", CONTROLLER);
    properties.put("log.dirs", folder.toString());
    properties.put("default.replication.factor", "3");
    properties.put("min.insync.replicas", "2");
    properties.put("offsets.topic.replication.factor", "3");
    properties.put("transaction.state.log.replication.factor", "3");
    properties.put("auto.create.topics.enable", "false");
    return properties;
  }

  private static void format(Path folder, String clusterId, int id) {
    try {
      new Formatter()
          .setPrintStream(
              new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8))
          .setSupportedFeatures(Feature.PRODUCTION_FEATURES)
          .setReleaseVersion(MetadataVersion.latestProduction())
          .setNodeId(id)
          .setClusterId(clusterId)
          .setDirectories(List.of(folder.toString()))
          .setMetadataLogDirectory(folder.toString())
          .setControllerListenerName(CONTROLLER)
          .setHasDynamicQuorum(false)
          .setIgnoreFormatted(false)
          .run();
    } catch (Exception e) {
      throw new IllegalStateException("not formatted: " + folder, e);
    }
  }

  private ChildProcess launched() throws IOException {
    return ChildProcess.start(
        folder.resolveSibling(folder.getFileName() + ".log"),
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx256m",
            "-cp",
            System.getProperty("java.class.path"),
            "kafka.Kafka",
            properties.toString()));
  }

  int id() {
    return id;
  }

  void kill() {
    process.kill();
  }

  void startAgain() throws IOException {
    process = launched();
  }

  boolean isAlive() {
    return process.isAlive();
  }

  /** The end of what it said, for a message. */
  String logged() {
    return process.logged();
  }
}
