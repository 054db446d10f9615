package dev.poleward.service.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * What the broker noted as flushed to the disk, partition by partition: every offset below was
 * there, and may have been acknowledged.
 *
 * @param below by folder name, such as {@code journal-3}
 */
record FlushedOffsets(Map<String, Long> below) {

  private static final String FILE = "recovery-point-offset-checkpoint";

  /** Reads the note; empty when there is none, or none that can be read. */
  static FlushedOffsets in(Path folder) throws IOException {
    var below = new HashMap<String, Long>();
    try {
      for (var line : Files.readAllLines(folder.resolve(FILE))) {
        var words = line.split(" ", -1);
        if (words.length == 3) {
          below.put(words[0] + "-" + words[1], Long.valueOf(words[2]));
        }
      }
    } catch (NoSuchFileException none) {
      return new FlushedOffsets(Map.of());
    } catch (NumberFormatException damaged) {
      return new FlushedOffsets(Map.of());
    }
    return new FlushedOffsets(Map.copyOf(below));
  }

  long below(String partitionFolder) {
    return below.getOrDefault(partitionFolder, 0L);
  }
}
