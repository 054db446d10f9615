package dev.poleward.domain.running;

import dev.poleward.domain.layout.Setup;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whole millimetres from setup to setup, so that equal ways are equal to the last digit. */
final class Distances {

  private static final int MILLIMETRES = 1_000;

  private final long[][] between;
  private final long[][] first;

  /**
   * @param between from the one setup to the other
   * @param first from what stands on a pole set to each setup
   */
  Distances(long[][] between, long[][] first) {
    this.between = between;
    this.first = first;
  }

  static Distances of(List<Setup> setups, List<PoleSet> poleSets, Carrying carrying) {
    long[][] between = new long[setups.size()][];
    for (int from = 0; from < between.length; from++) {
      between[from] = row(setups.get(from), setups, carrying);
    }
    long[][] first = new long[poleSets.size()][];
    for (int poleSet = 0; poleSet < first.length; poleSet++) {
      Setup stands = poleSets.get(poleSet).stands();
      first[poleSet] = row(stands == null ? null : AsItStands.of(stands), setups, carrying);
    }
    return new Distances(between, first);
  }

  private static long[] row(@Nullable Setup from, List<Setup> setups, Carrying carrying) {
    long[] row = new long[setups.size()];
    for (int to = 0; to < row.length; to++) {
      row[to] =
          setups.get(to).equals(from)
              ? 0
              : Math.round(carrying.metres(from, setups.get(to)) * MILLIMETRES);
    }
    return row;
  }

  /** Those of some of the setups alone, in that order. */
  Distances among(int[] chosen) {
    long[][] some = new long[chosen.length][];
    for (int from = 0; from < chosen.length; from++) {
      some[from] = among(between[chosen[from]], chosen);
    }
    long[][] begun = new long[first.length][];
    for (int poleSet = 0; poleSet < first.length; poleSet++) {
      begun[poleSet] = among(first[poleSet], chosen);
    }
    return new Distances(some, begun);
  }

  private static long[] among(long[] row, int[] chosen) {
    long[] some = new long[chosen.length];
    for (int i = 0; i < chosen.length; i++) {
      some[i] = row[chosen[i]];
    }
    return some;
  }

  int setups() {
    return between.length;
  }

  long[][] between() {
    return between;
  }

  /** From the setup laid out last on a pole set, or from what stands there before the first. */
  long from(int poleSet, int last, int to) {
    return last < 0 ? first[poleSet][to] : between[last][to];
  }

  static double metres(long millimetres) {
    return (double) millimetres / MILLIMETRES;
  }
}
