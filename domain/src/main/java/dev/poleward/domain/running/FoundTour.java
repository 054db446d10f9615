package dev.poleward.domain.running;

import java.util.function.Predicate;

/** One tour that was found, with what none goes below. */
final class FoundTour implements Tours {

  private final int[][] ways;
  private final long millimetres;
  private final long atLeast;

  /**
   * @param ways by pole set, the setups as they are laid out
   */
  FoundTour(int[][] ways, long millimetres, long atLeast) {
    this.ways = ways;
    this.millimetres = millimetres;
    this.atLeast = atLeast;
  }

  @Override
  public long millimetres() {
    return millimetres;
  }

  @Override
  public long atLeast() {
    return atLeast;
  }

  @Override
  public void deals(Predicate<long[]> look) {
    long[] deal = new long[ways.length];
    for (int poleSet = 0; poleSet < ways.length; poleSet++) {
      for (int setup : ways[poleSet]) {
        deal[poleSet] |= 1L << setup;
      }
    }
    var _ = look.test(deal);
  }

  @Override
  public boolean mayBeNext(int poleSet, int last, long left, int next) {
    int[] way = ways[poleSet];
    return way[way.length - Long.bitCount(left)] == next;
  }
}
