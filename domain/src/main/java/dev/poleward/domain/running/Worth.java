package dev.poleward.domain.running;

import java.util.Comparator;

/**
 * How good an order of turns is: the less is waited the better, then the sooner it ends.
 *
 * @param waits seconds
 * @param end seconds from the beginning
 */
record Worth(int waits, int end) implements Comparable<Worth> {

  private static final Comparator<Worth> ORDER =
      Comparator.comparingInt(Worth::waits).thenComparingInt(Worth::end);

  @Override
  public int compareTo(Worth other) {
    return ORDER.compare(this, other);
  }
}
