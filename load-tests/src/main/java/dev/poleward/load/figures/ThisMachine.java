package dev.poleward.load.figures;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What figures were measured on. */
public final class ThisMachine {

  private static final Path MEMORY = Path.of("/proc/meminfo");

  private ThisMachine() {}

  /** Cores, memory, system and JVM, in one line. */
  public static String describe() {
    return "%d cores, %s, %s %s, Java %s"
        .formatted(
            Runtime.getRuntime().availableProcessors(),
            memory(),
            System.getProperty("os.name"),
            System.getProperty("os.arch"),
            System.getProperty("java.vm.version"));
  }

  private static String memory() {
    try {
      for (String line : Files.readAllLines(MEMORY)) {
        if (line.startsWith("MemTotal:")) {
          long kibibytes = Long.parseLong(line.replaceAll("\\D", ""));
          return "%.1f GiB".formatted(kibibytes / 1024.0 / 1024);
        }
      }
    } catch (IOException e) {
      // Not a Linux: the figures stand without it.
    }
    return "memory unknown";
  }
}
