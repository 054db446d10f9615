package dev.poleward.load.node;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A process that ends with this one, whatever happens, and writes into a file what it has to say.
 */
public final class ChildProcess {

  private static final int LOG_LINES_SHOWN = 40;

  private final Process process;
  private final Path log;
  private final Thread reaper;
  private final long startedNanos;

  private ChildProcess(Process process, Path log, long startedNanos) {
    this.process = process;
    this.log = log;
    this.startedNanos = startedNanos;
    this.reaper = new Thread(process::destroyForcibly);
    Runtime.getRuntime().addShutdownHook(reaper);
  }

  /** Starts it. */
  public static ChildProcess start(Path log, List<String> command) throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()));
    builder.redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()));
    long now = System.nanoTime();
    return new ChildProcess(builder.start(), log, now);
  }

  /** Time since it was started. */
  public Duration age() {
    return Duration.ofNanos(System.nanoTime() - startedNanos);
  }

  public boolean isAlive() {
    return process.isAlive();
  }

  public ProcessHandle handle() {
    return process.toHandle();
  }

  /** Waits until it has ended; whether it did so in time, and in order. */
  boolean ends(Duration wait) {
    return await(wait) && process.exitValue() == 0;
  }

  /** SIGKILL, and waits until it is gone. */
  public void kill() {
    process.destroyForcibly();
    await(Duration.ofSeconds(10));
  }

  /**
   * SIGTERM, and waits.
   *
   * @throws IllegalStateException when it does not stop in time
   */
  public void stop(Duration wait) {
    process.destroy();
    if (!await(wait)) {
      process.destroyForcibly();
      throw new IllegalStateException("not stopped within " + wait + logged());
    }
  }

  private boolean await(Duration wait) {
    try {
      boolean ended = process.waitFor(wait.toMillis(), TimeUnit.MILLISECONDS);
      if (ended) {
        Runtime.getRuntime().removeShutdownHook(reaper);
      }
      return ended;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while a process was to end", e);
    } catch (IllegalStateException e) {
      // This process is ending too, and its hooks with it.
      return true;
    }
  }

  /** The end of what it said, for a message. */
  public String logged() {
    try {
      List<String> lines = Files.readAllLines(log, StandardCharsets.UTF_8);
      int from = Math.max(0, lines.size() - LOG_LINES_SHOWN);
      return "; the end of " + log + ":\n" + String.join("\n", lines.subList(from, lines.size()));
    } catch (IOException e) {
      return "; " + log + " cannot be read: " + e;
    }
  }
}
