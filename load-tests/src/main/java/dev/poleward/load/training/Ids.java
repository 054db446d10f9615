package dev.poleward.load.training;

import java.time.Instant;
import java.util.HexFormat;
import java.util.SplittableRandom;

/** Ids in the form of UUIDs of version 7, which begin with the time. For one thread. */
final class Ids {

  private static final HexFormat HEX = HexFormat.of();

  private final SplittableRandom random;

  Ids(SplittableRandom random) {
    this.random = random;
  }

  /** An id for something that happened then. */
  String at(Instant time) {
    long first = (time.toEpochMilli() << 16) | 0x7000 | random.nextInt(0x1000);
    long second = 0x8000_0000_0000_0000L | (random.nextLong() >>> 2);
    String high = HEX.toHexDigits(first);
    String low = HEX.toHexDigits(second);
    return high.substring(0, 8)
        + '-'
        + high.substring(8, 12)
        + '-'
        + high.substring(12)
        + '-'
        + low.substring(0, 4)
        + '-'
        + low.substring(4);
  }
}
