package dev.poleward.domain.running;

import java.util.function.Predicate;

/**
 * Ways to deal the setups to the pole sets and to lay them out one after the other, all with the
 * same millimetres. Each setup stands once; what stands at the beginning comes first where it is
 * wanted on that pole set; and no pole set is busy for longer than there is time.
 *
 * <p>Sets of setups are bits.
 */
sealed interface Tours permits ExactTours, FoundTour {

  /** What each of them comes to. */
  long millimetres();

  /** What none goes below. */
  long atLeast();

  /**
   * Looks at the ways to deal, by pole set, until the look says that it has seen enough.
   *
   * @param look keeps no array that it is shown
   */
  void deals(Predicate<long[]> look);

  /**
   * Whether a setup may be laid out next on a pole set.
   *
   * @param last laid out there, {@link Lesson#NONE} for none yet
   * @param left to be laid out there, the one in question too
   */
  boolean mayBeNext(int poleSet, int last, long left, int next);
}
