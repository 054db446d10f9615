package dev.poleward.load.drill;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Looks into every file below a folder. */
public final class FolderSearch {

  private FolderSearch() {}

  /** Files with any of the traces, and how many of these each has. */
  public static List<String> find(Path folder, Traces traces) throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : files(folder)) {
      try {
        long count = traces.countIn(Files.readAllBytes(file));
        if (count > 0) {
          found.add(file + " (" + count + " of " + traces.size() + " traces)");
        }
      } catch (NoSuchFileException e) {
        // A running service deletes files while we look.
      }
    }
    return found;
  }

  /** Every file below a folder, or the file itself. */
  public static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).toList();
    }
  }
}
