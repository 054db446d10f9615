package dev.poleward.load.judgement;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/** How soon a watch sounds for dogs that slip from one share of misses to another. */
public final class Slipping {

  /** Reps after which we give a watch up. */
  private static final int REPS_MAX = 1_000_000;

  /** From the slip to the alarm, ascending, a dog each. */
  private final int[] reps;

  private Slipping(int[] reps) {
    this.reps = reps;
  }

  /** From the first rep on. */
  public static Slipping atOnce(Supplier<Watch> watch, double missed, int dogs, long seed) {
    return after(0, watch, missed, missed, dogs, seed);
  }

  /**
   * After some solid reps; dogs for which the watch sounds before they slip are left out and
   * replaced.
   */
  public static Slipping after(
      int solidReps, Supplier<Watch> watch, double solid, double slipped, int dogs, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int[] reps = new int[dogs];
    for (int dog = 0; dog < dogs; ) {
      Watch fresh = watch.get();
      boolean sounded = false;
      for (int rep = 0; rep < solidReps && !sounded; rep++) {
        sounded = fresh.sees(random.nextDouble() >= solid);
      }
      if (!sounded) {
        reps[dog++] = repsToAlarm(fresh, slipped, random);
      }
    }
    Arrays.sort(reps);
    return new Slipping(reps);
  }

  private static int repsToAlarm(Watch watch, double missed, SplittableRandom random) {
    int reps = 1;
    while (!watch.sees(random.nextDouble() >= missed) && reps < REPS_MAX) {
      reps++;
    }
    return reps;
  }

  /** On average. */
  public double mean() {
    return Arrays.stream(reps).average().orElseThrow();
  }

  /** How many reps suffice for that share of dogs. */
  public int quantile(double share) {
    return reps[Math.min(reps.length - 1, (int) (share * reps.length))];
  }
}
