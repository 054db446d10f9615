package dev.poleward.domain.running;

import java.util.Arrays;

/**
 * Shortest ways through all places of a set, by dynamic programming over sets (Held and Karp, A
 * dynamic programming approach to sequencing problems, 1962). Immutable once made; takes 8·n·2ⁿ
 * bytes and n²·2ⁿ steps.
 */
final class HeldKarp {

  /** Places at most: 8 MB. */
  static final int PLACES_MAX = 16;

  private final int places;
  private final long[] least;

  /**
   * @param home from each place to where every way ends; zeros for ways that end anywhere
   */
  private HeldKarp(long[][] between, long[] home) {
    this.places = between.length;
    if (places > PLACES_MAX) {
      throw new IllegalArgumentException("too many places: " + places);
    }
    this.least = new long[places * (1 << places)];
    System.arraycopy(home, 0, least, 0, places);
    for (int set = 1; set < 1 << places; set++) {
      for (int last = 0; last < places; last++) {
        if ((set >> last & 1) == 0) {
          least[set * places + last] = shortest(between[last], set);
        }
      }
    }
  }

  /** Ways that end anywhere. */
  static HeldKarp open(long[][] between) {
    return new HeldKarp(between, new long[between.length]);
  }

  /**
   * The shortest round trip through all places.
   *
   * @param between from each place to each other, 2 to 17 places
   */
  static long roundTrip(long[][] between) {
    int others = between.length - 1;
    long[][] rest = new long[others][];
    long[] home = new long[others];
    for (int place = 0; place < others; place++) {
      rest[place] = Arrays.copyOf(between[place], others);
      home[place] = between[place][others];
    }
    long[] out = Arrays.copyOf(between[others], others);
    return new HeldKarp(rest, home).shortest(out, (1 << others) - 1);
  }

  /** The shortest way from a place through all of a set that it is not in. */
  long from(int last, int set) {
    return least[set * places + last];
  }

  /**
   * The shortest way from somewhere through all of a set.
   *
   * @param first from there to each place
   */
  long shortest(long[] first, int set) {
    if (set == 0) {
      return 0;
    }
    long shortest = Long.MAX_VALUE;
    for (int left = set; left != 0; left &= left - 1) {
      int next = Integer.numberOfTrailingZeros(left);
      shortest = Math.min(shortest, first[next] + least[(set & ~(1 << next)) * places + next]);
    }
    return shortest;
  }
}
