package dev.poleward.domain.running;

import java.util.Arrays;

/**
 * Ways on pole sets that can be changed, and what changes cost. Counts as dear what may not be: a
 * second for which there is no time, and what stands coming later than first. For one thread.
 */
final class Ways {

  /** Weighs more than any metres. */
  static final long FORBIDDEN = 1L << 40;

  private static final int NONE = Lesson.NONE;

  private final Lesson lesson;
  private int[][] ways;

  Ways(Lesson lesson) {
    this.lesson = lesson;
    this.ways = new int[lesson.poleSets()][0];
  }

  int[][] all() {
    return Arrays.stream(ways).map(int[]::clone).toArray(int[][]::new);
  }

  void restore(int[][] before) {
    ways = before;
  }

  int[] on(int poleSet) {
    return ways[poleSet];
  }

  void put(int poleSet, int[] way) {
    ways[poleSet] = way;
  }

  long cost() {
    long cost = 0;
    for (int poleSet = 0; poleSet < ways.length; poleSet++) {
      cost += length(poleSet, ways[poleSet]) + late(poleSet, bits(ways[poleSet]));
    }
    return cost;
  }

  /** From one setup to the next on a pole set; nothing to the end. */
  long edge(int poleSet, int from, int to) {
    if (to == NONE) {
      return 0;
    }
    long metres = lesson.distances.from(poleSet, from, to);
    return from != NONE && lesson.stands[poleSet] == to ? FORBIDDEN + metres : metres;
  }

  long length(int poleSet, int[] way) {
    long length = 0;
    int last = NONE;
    for (int setup : way) {
      length += edge(poleSet, last, setup);
      last = setup;
    }
    return length;
  }

  /** What it costs that a pole set is busy for longer than there is time. */
  long late(int poleSet, long setups) {
    return FORBIDDEN * Math.max(0, lesson.busy(poleSet, setups) - lesson.busyMax);
  }

  static long bits(int... setups) {
    long bits = 0;
    for (int setup : setups) {
      bits |= 1L << setup;
    }
    return bits;
  }

  /** What stands at a place of a way: {@link Lesson#NONE} before its beginning and behind it. */
  static int at(int[] way, int place) {
    return place < 0 || place >= way.length ? NONE : way[place];
  }

  /** A way without the setups from a place to before another. */
  static int[] without(int[] way, int begin, int end) {
    return joined(Arrays.copyOf(way, begin), Arrays.copyOfRange(way, end, way.length));
  }

  /** A way with others put in at a place. */
  static int[] with(int[] way, int place, int... more) {
    return joined(
        joined(Arrays.copyOf(way, place), more), Arrays.copyOfRange(way, place, way.length));
  }

  static int[] joined(int[] head, int[] tail) {
    int[] joined = Arrays.copyOf(head, head.length + tail.length);
    System.arraycopy(tail, 0, joined, head.length, tail.length);
    return joined;
  }

  static int[] reversed(int[] way) {
    int[] reversed = new int[way.length];
    for (int i = 0; i < way.length; i++) {
      reversed[i] = way[way.length - 1 - i];
    }
    return reversed;
  }
}
