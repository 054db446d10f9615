package dev.poleward.domain.running;

import dev.poleward.domain.layout.Setup;
import java.util.List;

/**
 * Who runs when. Times are in seconds from the beginning.
 *
 * @param poleSets in the order of the question
 * @param leftOut turns for which there is no time, in the order in which they would have come
 * @param isMost whether more turns than these cannot be through in time, those that come next
 * @param carried metres over all pole sets
 * @param waited seconds that pole sets stand ready while nobody runs and somebody is to come
 * @param ends when the last dog is done
 * @param naive the same turns in the order of the question
 */
public record RunningOrder(
    List<OfPoleSet> poleSets,
    List<LeftOut> leftOut,
    boolean isMost,
    Reached carried,
    Reached waited,
    int ends,
    Naive naive) {

  /** Keeps the lists from changing. */
  public RunningOrder {
    poleSets = List.copyOf(poleSets);
    leftOut = List.copyOf(leftOut);
  }

  /** Whether nothing is better: no more turns, none with less carried, none with less waited. */
  public boolean isBest() {
    return isMost && carried.isLeast() && waited.isLeast();
  }

  /**
   * How little it came to.
   *
   * @param atLeast what no order goes below; equal where this one is the least there is
   */
  public record Reached(double amount, double atLeast) {

    /** Whether no order can do with less. */
    public boolean isLeast() {
      return amount <= atLeast;
    }
  }

  /**
   * What happens on one pole set.
   *
   * @param ends when its last dog is done; 0 where nobody runs
   */
  public record OfPoleSet(String name, List<Standing> standings, int ends) {

    /** Keeps the list from changing. */
    public OfPoleSet {
      standings = List.copyOf(standings);
    }
  }

  /**
   * A setup while it stands.
   *
   * @param metres carried to have it stand
   * @param ready from when on it stands
   * @param turns in their order
   */
  public record Standing(Setup setup, double metres, int ready, List<Turn> turns) {

    /** Keeps the list from changing. */
    public Standing {
      turns = List.copyOf(turns);
    }
  }

  /** One dog out on the poles. */
  public record Turn(String dog, int starts, int ends) {}

  /** A turn for which there is no time. */
  public record LeftOut(String dog, Setup setup, Reason why) {

    /** Why there is none. */
    public enum Reason {
      /** Others come first: everybody's first turn goes before anybody's second. */
      TIME_IS_UP,
      /** The dog's own turns with the rests between them are longer than the time. */
      RESTS_TOO_LONG
    }
  }

  /** What it comes to when the dogs run in the order given, each its drills in turn. */
  public record Naive(double metres, int waited, int ends) {}
}
