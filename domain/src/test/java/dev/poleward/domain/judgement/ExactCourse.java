package dev.poleward.domain.judgement;

import java.util.Arrays;

/**
 * The course of a sequential test for a dog of a given share of clean reps, exactly: rep by rep,
 * how likely so many misses are with nothing decided so far. Immutable.
 */
public final class ExactCourse {

  /** Less than this of all dogs is still undecided when we stop. */
  private static final double UNDECIDED_MAX = 1e-14;

  /** Reps of one test; reached only by tests that hardly tell the two shares apart. */
  private static final int REPS_MAX = 20_000;

  private final double[] movedOnAt;
  private final double[] heldAt;

  private ExactCourse(double[] movedOnAt, double[] heldAt) {
    this.movedOnAt = movedOnAt;
    this.heldAt = heldAt;
  }

  /**
   * The course of a test.
   *
   * @param share of clean reps, 0 to 1
   */
  public static ExactCourse of(SequentialTest test, double share) {
    double[] movedOnAt = new double[REPS_MAX + 1];
    double[] heldAt = new double[REPS_MAX + 1];
    double[] undecided = {1};
    double left = 1;
    int reps = 0;
    while (left > UNDECIDED_MAX && reps < REPS_MAX) {
      reps++;
      double[] next = new double[Math.min(undecided.length, reps) + 1];
      left = 0;
      for (int missed = 0; missed < next.length; missed++) {
        double chance =
            (missed < undecided.length ? undecided[missed] * share : 0)
                + (missed > 0 ? undecided[missed - 1] * (1 - share) : 0);
        switch (test.at(test.balance(reps - missed, missed))) {
          case MOVE_ON -> movedOnAt[reps] += chance;
          case HOLD -> heldAt[reps] += chance;
          case UNDECIDED -> {
            next[missed] = chance;
            left += chance;
          }
        }
      }
      undecided = withoutNoneAbove(next);
    }
    return new ExactCourse(Arrays.copyOf(movedOnAt, reps + 1), Arrays.copyOf(heldAt, reps + 1));
  }

  private static double[] withoutNoneAbove(double[] chances) {
    int length = chances.length;
    while (length > 1 && chances[length - 1] == 0) {
      length--;
    }
    return Arrays.copyOf(chances, length);
  }

  /** Of one test: how likely it ends with moving on, and how many reps it takes on average. */
  public CourseOfTest ofOneTest() {
    double moveOn = 0;
    double reps = 0;
    for (int n = 1; n < movedOnAt.length; n++) {
      moveOn += movedOnAt[n];
      reps += n * (movedOnAt[n] + heldAt[n]);
    }
    return new CourseOfTest(moveOn, reps);
  }

  /** How likely the dog is moved on within so many reps, by one test after the other. */
  public double moveOnWithin(int reps) {
    double[] within = new double[reps + 1];
    for (int n = 1; n <= reps; n++) {
      within[n] = within[n - 1] + firstAt(n, within);
    }
    return within[reps];
  }

  /** How likely at just that rep: by the first test, or after a first hold at an earlier rep. */
  private double firstAt(int n, double[] within) {
    double chance = n < movedOnAt.length ? movedOnAt[n] : 0;
    for (int held = 1; held < Math.min(n, heldAt.length); held++) {
      chance += heldAt[held] * (within[n - held] - within[n - held - 1]);
    }
    return chance;
  }
}
