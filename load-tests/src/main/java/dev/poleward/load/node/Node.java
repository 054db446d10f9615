package dev.poleward.load.node;

import dev.poleward.load.wire.Connection;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * The service on one data folder, over many lives. Its ports are drawn anew for each life. For one
 * thread, save for what only reads.
 */
public final class Node implements AutoCloseable {

  /** Long enough for a build, which the first start may have to do. */
  private static final Duration FIRST_READY_MAX = Duration.ofMinutes(5);

  private static final Duration STOP_MAX = Duration.ofSeconds(30);
  private static final Duration ANSWER_MAX = Duration.ofSeconds(5);
  private static final int POLL_MILLIS = 5;

  private final Path data;
  private final Path log;
  private final List<String> options;
  private volatile int port;
  private volatile int kafkaPort;
  private volatile ChildProcess process;

  private Node(Path data, List<String> options) throws IOException {
    this.data = data;
    this.log = data.resolveSibling(data.getFileName() + ".log");
    this.options = options;
    this.process = launched();
  }

  /** Starts the service with its own broker, on a folder that need not be there. */
  public static Node start(Path data) throws IOException {
    return new Node(data, List.of());
  }

  /** Starts it with further words on its command line, {@code --kafka} among them. */
  public static Node startOnCluster(Path data, List<String> options) throws IOException {
    return new Node(data, options);
  }

  private ChildProcess launched() throws IOException {
    port = FreePort.find();
    List<String> command =
        new ArrayList<>(
            List.of(
                Checkout.start().toString(),
                "serve",
                "--data",
                data.toString(),
                "--port",
                Integer.toString(port)));
    if (options.isEmpty()) {
      kafkaPort = FreePort.find();
      command.addAll(List.of("--kafka-port", Integer.toString(kafkaPort)));
    }
    command.addAll(options);
    return ChildProcess.start(log, command);
  }

  /** Starts it again after it was stopped or killed. */
  public void startAgain() throws IOException {
    if (process.isAlive()) {
      throw new IllegalStateException("it still runs");
    }
    process = launched();
  }

  /**
   * Waits until {@code /health/ready} answers 200.
   *
   * @return the time since the process was started
   */
  public Duration awaitReady() {
    while (true) {
      if (isReady()) {
        return process.age();
      }
      if (!process.isAlive()) {
        throw new IllegalStateException("ended instead of becoming ready" + process.logged());
      }
      if (process.age().compareTo(FIRST_READY_MAX) > 0) {
        throw new IllegalStateException("not ready in " + FIRST_READY_MAX + process.logged());
      }
      try {
        Thread.sleep(POLL_MILLIS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("interrupted before it was ready", e);
      }
    }
  }

  private boolean isReady() {
    try (Connection connection = Connection.open(port, ANSWER_MAX)) {
      return connection.get("/health/ready", "").status() == 200;
    } catch (IOException e) {
      return false;
    }
  }

  /** Where it answers. */
  public int port() {
    return port;
  }

  /** Where its broker answers, for Kafka clients. */
  public String kafka() {
    return "127.0.0.1:" + kafkaPort;
  }

  /** Where it writes what it has to say. */
  public Path log() {
    return log;
  }

  public Path data() {
    return data;
  }

  /** The key that registers clubs. */
  public String hostKey() throws IOException {
    return Files.readString(data.resolve("host.key")).strip();
  }

  public Memory memory() {
    return Memory.of(process.handle().pid());
  }

  public ProcessHandle handle() {
    return process.handle();
  }

  /** The end of what it said, for a message. */
  public String logged() {
    return process.logged();
  }

  /** SIGKILL. */
  public void kill() {
    process.kill();
  }

  /** SIGTERM; throws when it does not stop in time. */
  public void stop() {
    process.stop(STOP_MAX);
  }

  /** Stops it, if it runs. */
  @Override
  public void close() {
    if (process.isAlive()) {
      stop();
    }
  }
}
