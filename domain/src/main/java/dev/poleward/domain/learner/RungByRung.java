package dev.poleward.domain.learner;

import dev.poleward.domain.layout.EntryAngle;
import java.util.List;

/**
 * A plain trainer's way up a ladder of angles, what better plans are measured against: both entry
 * sides in turn at one rung, the next rung when each has made five of its last six entries, the
 * rung below when either has made fewer than three, and after two misses running one rep a rung
 * lower [C]. For one thread.
 */
public final class RungByRung {

  private static final int WINDOW = 6;
  private static final int MADE = 5;
  private static final int MADE_TO_STAY = 3;
  private static final int MISSES_RUNNING = 2;

  private final List<Double> sizes;
  private final int repsASide;
  private final int[] seen = new int[2];
  private final int[] made = new int[2];
  private int rung;
  private int side;
  private int ranOnSide;
  private int missesRunning;
  private boolean stepsBack;

  /**
   * A ladder.
   *
   * @param sizes sizes of the angle in degrees, the easiest first; at least one
   * @param repsASide how many reps are run on one entry side before it is the other's turn, at
   *     least one; more where equipment has to be moved in between
   */
  public RungByRung(List<Double> sizes, int repsASide) {
    this.sizes = List.copyOf(sizes);
    this.repsASide = repsASide;
    if (sizes.isEmpty()) {
      throw new IllegalArgumentException("a ladder has a rung");
    }
    if (repsASide < 1) {
      throw new IllegalArgumentException("a side has at least one rep: " + repsASide);
    }
  }

  /** Whether the last rung is passed. */
  public boolean done() {
    return rung == sizes.size();
  }

  /** The rung that is worked on, from 0; the number of rungs when all are passed. */
  public int rung() {
    return rung;
  }

  /** What is run next; the last rung again when all are passed. */
  public EntryAngle next() {
    int at = Math.min(rung, sizes.size() - 1);
    double size = sizes.get(stepsBack && at > 0 ? at - 1 : at);
    return new EntryAngle(side == 0 ? size : -size);
  }

  /** How what {@link #next} said went. */
  public void ran(boolean entryMade) {
    if (done()) {
      turn();
      return;
    }
    if (stepsBack) {
      stepsBack = false;
      missesRunning = 0;
      return;
    }
    missesRunning = entryMade ? 0 : missesRunning + 1;
    stepsBack = missesRunning == MISSES_RUNNING;
    note(side, entryMade);
    if (sizes.get(rung) == 0) {
      // Straight on counts on either side.
      note(1 - side, entryMade);
    }
    if (passed(0) && passed(1)) {
      workAt(rung + 1);
    } else if (rung > 0 && (isTooHard(0) || isTooHard(1))) {
      workAt(rung - 1);
    }
    turn();
  }

  private void note(int of, boolean entryMade) {
    seen[of]++;
    made[of] = (made[of] << 1 | (entryMade ? 1 : 0)) & ((1 << WINDOW) - 1);
  }

  private boolean passed(int of) {
    return seen[of] >= WINDOW && Integer.bitCount(made[of]) >= MADE;
  }

  private boolean isTooHard(int of) {
    return seen[of] >= WINDOW && Integer.bitCount(made[of]) < MADE_TO_STAY;
  }

  /** What was seen on one rung says nothing about another. */
  private void workAt(int other) {
    rung = other;
    stepsBack = false;
    missesRunning = 0;
    for (int of = 0; of < 2; of++) {
      seen[of] = 0;
      made[of] = 0;
    }
  }

  /** Sides take turns, unless one is done with the rung and the other is not. */
  private void turn() {
    ranOnSide++;
    boolean sidesDiffer = passed(side) != passed(1 - side);
    boolean change = sidesDiffer ? passed(side) : !stepsBack && ranOnSide >= repsASide;
    if (change) {
      side = 1 - side;
      ranOnSide = 0;
    }
  }
}
