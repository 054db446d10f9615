package dev.poleward.domain.running;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * All tours that are shortest: {@link HeldKarp} for every set of setups, and over that the best way
 * to deal them to the pole sets, in 3ⁿ steps for each pole set.
 */
final class ExactTours implements Tours {

  /** Setups at most. */
  static final int SETUPS_MAX = 12;

  private static final long CANNOT = Long.MAX_VALUE / 4;

  private final Lesson lesson;
  private final HeldKarp ways;

  /** By pole set and set of setups: the shortest way there. */
  private final long[][] alone;

  /** By pole set and set of setups: the shortest ways on it and those before it. */
  private final long[][] together;

  private ExactTours(Lesson lesson) {
    this.lesson = lesson;
    this.ways = HeldKarp.open(lesson.distances.between());
    this.alone = new long[lesson.poleSets()][1 << lesson.setups()];
    this.together = new long[lesson.poleSets()][];
    for (int poleSet = 0; poleSet < alone.length; poleSet++) {
      for (int set = 0; set < alone[poleSet].length; set++) {
        alone[poleSet][set] =
            lesson.busy(poleSet, set) > lesson.busyMax ? CANNOT : left(poleSet, Lesson.NONE, set);
      }
      together[poleSet] = poleSet == 0 ? alone[0] : dealt(together[poleSet - 1], alone[poleSet]);
    }
  }

  /** Empty when there is not time enough for all turns, however they are dealt. */
  static Optional<ExactTours> of(Lesson lesson) {
    ExactTours tours = new ExactTours(lesson);
    return tours.millimetres() >= CANNOT ? Optional.empty() : Optional.of(tours);
  }

  private static long[] dealt(long[] before, long[] here) {
    long[] best = new long[here.length];
    Arrays.fill(best, CANNOT);
    for (int set = 0; set < best.length; set++) {
      for (int part = set; part >= 0; part = part == 0 ? -1 : (part - 1) & set) {
        best[set] = Math.min(best[set], before[set & ~part] + here[part]);
      }
    }
    return best;
  }

  /** The shortest way through what is left on a pole set. */
  private long left(int poleSet, int last, int set) {
    if (last != Lesson.NONE) {
      return ways.from(last, set);
    }
    if (lesson.standsAmong(poleSet, set)) {
      int stands = lesson.stands[poleSet];
      return lesson.distances.from(poleSet, Lesson.NONE, stands)
          + ways.from(stands, set & ~(1 << stands));
    }
    long[] first = new long[lesson.setups()];
    for (int setup = 0; setup < first.length; setup++) {
      first[setup] = lesson.distances.from(poleSet, Lesson.NONE, setup);
    }
    return ways.shortest(first, set);
  }

  @Override
  public long millimetres() {
    long[] all = together[together.length - 1];
    return all[all.length - 1];
  }

  @Override
  public long atLeast() {
    return millimetres();
  }

  @Override
  public void deals(Predicate<long[]> look) {
    deal(alone.length - 1, (1 << lesson.setups()) - 1, new long[alone.length], look);
  }

  /** Whether to go on. */
  private boolean deal(int poleSet, int set, long[] deal, Predicate<long[]> look) {
    if (poleSet == 0) {
      deal[0] = set;
      return look.test(deal);
    }
    for (int part = set; part >= 0; part = part == 0 ? -1 : (part - 1) & set) {
      deal[poleSet] = part;
      if (together[poleSet - 1][set & ~part] + alone[poleSet][part] == together[poleSet][set]
          && !deal(poleSet - 1, set & ~part, deal, look)) {
        return false;
      }
    }
    return true;
  }

  @Override
  public boolean mayBeNext(int poleSet, int last, long left, int next) {
    int set = (int) left;
    boolean first = last != Lesson.NONE || !lesson.standsAmong(poleSet, left);
    return (first || lesson.stands[poleSet] == next)
        && lesson.distances.from(poleSet, last, next) + ways.from(next, set & ~(1 << next))
            == left(poleSet, last, set);
  }
}
