package dev.poleward.service.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The epochs of a partition's leaders, as the broker noted each before the first record under it. A
 * batch's checksum does not cover its epoch, so this is what a damaged one is found by.
 *
 * @param from each epoch by its first offset; empty when the broker's note is not there: then every
 *     epoch is taken
 */
record LeaderEpochs(NavigableMap<Long, Integer> from) {

  private static final String FILE = "leader-epoch-checkpoint";
  private static final String FORMAT = "0";
  private static final int LINES_BEFORE = 2;

  /** Every epoch is taken. */
  static final LeaderEpochs ANY = new LeaderEpochs(new TreeMap<>());

  /** Those noted in a partition's folder. */
  static LeaderEpochs in(Path partition) {
    try {
      var lines = Files.readAllLines(partition.resolve(FILE));
      if (lines.size() < LINES_BEFORE || !lines.getFirst().equals(FORMAT)) {
        return ANY;
      }
      var from = new TreeMap<Long, Integer>();
      for (var line : lines.subList(LINES_BEFORE, lines.size())) {
        int space = line.indexOf(' ');
        from.put(
            Long.valueOf(line.substring(space + 1)), Integer.valueOf(line.substring(0, space)));
      }
      return new LeaderEpochs(from);
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException unreadable) {
      return ANY;
    }
  }

  /** Whether a batch that begins with this offset can be of this epoch. */
  boolean fit(long offset, int epoch) {
    var noted = from.floorEntry(offset);
    return epoch >= 0 && (noted == null || noted.getValue() == epoch);
  }
}
