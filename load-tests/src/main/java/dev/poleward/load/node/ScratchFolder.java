package dev.poleward.load.node;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder for a run. What went well is deleted at its end; otherwise somebody may want to look.
 * For one thread.
 */
public final class ScratchFolder implements AutoCloseable {

  private final Path path;
  private final boolean keep;
  private boolean wentWell;

  /**
   * A new folder below the one for temporary files.
   *
   * @param keep whether it is kept in any case
   */
  public ScratchFolder(String program, boolean keep) throws IOException {
    this.path = Files.createTempDirectory("poleward-" + program + "-");
    this.keep = keep;
  }

  /** A folder in it that may or may not be there. */
  public Path resolve(String name) {
    return path.resolve(name);
  }

  /** Says that nobody need look. */
  public void wentWell() {
    wentWell = true;
  }

  /** Deletes a folder with all that is in it. */
  public static void delete(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
      for (Path each : deepestFirst) {
        Files.delete(each);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("not deleted: " + folder, e);
    }
  }

  @Override
  public void close() {
    if (wentWell && !keep) {
      delete(path);
    } else {
      System.err.println("Kept for a look: " + path);
    }
  }
}
