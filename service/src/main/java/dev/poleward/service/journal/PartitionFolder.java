package dev.poleward.service.journal;

import dev.poleward.service.journal.SegmentFile.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * One partition's folder: its segments in order, each beginning where the one before ended.
 *
 * @param path the folder
 * @param wholeHistory whether nothing may be missing: from offset 0, without a gap
 * @param stoppedInOrder whether the broker closed its files last time, so that none can be torn
 */
record PartitionFolder(Path path, boolean wholeHistory, boolean stoppedInOrder) {

  /** What the check found. */
  sealed interface Finding {

    /**
     * All is well.
     *
     * @param end offset of the next record
     * @param torn what is left of an append that was never finished, in words; empty if nothing is
     */
    record Sound(long end, String torn) implements Finding {}

    /** Something is not as it was written; in words, with file and offset. */
    record Damaged(String words) implements Finding {}
  }

  /** Reads all segments, or up to the first that is damaged. */
  Finding check() throws IOException {
    var segments = segments();
    var epochs = wholeHistory ? LeaderEpochs.in(path) : LeaderEpochs.ANY;
    long next = 0;
    var torn = "";
    for (int at = 0; at < segments.size(); at++) {
      var segment = segments.get(at);
      boolean last = at == segments.size() - 1;
      long base = baseOffset(segment);
      if (wholeHistory ? base != next : base < next) {
        return new Finding.Damaged(
            "%s: begins with offset %d, but %d comes next: a segment file is missing or was put here"
                .formatted(segment, base, next));
      }
      var rules = new SegmentFile.Rules(wholeHistory, last && !stoppedInOrder, epochs);
      switch (new SegmentFile(segment, rules).read(base)) {
        case SegmentFile.Finding.Whole whole -> next = whole.nextOffset();
        case SegmentFile.Finding.Torn end -> {
          next = end.nextOffset();
          torn =
              "%s: %d bytes at byte %d, where offset %d was to come, are an append that was never finished"
                  .formatted(segment, end.bytes(), end.position(), next);
        }
        case SegmentFile.Finding.Bad bad -> {
          return new Finding.Damaged(
              "%s: the batch with offset %d, at byte %d, is damaged: %s"
                  .formatted(segment, bad.offset(), bad.position(), bad.why()));
        }
      }
    }
    return new Finding.Sound(next, torn);
  }

  private List<Path> segments() throws IOException {
    try (var files = Files.list(path)) {
      return files.filter(PartitionFolder::isSegment).sorted().toList();
    }
  }

  private static boolean isSegment(Path file) {
    return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).matches("[0-9]{20}\\.log");
  }

  private static long baseOffset(Path segment) {
    return Long.parseLong(String.valueOf(segment.getFileName()).substring(0, 20));
  }
}
