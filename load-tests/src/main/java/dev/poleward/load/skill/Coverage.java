package dev.poleward.load.skill;

import dev.poleward.domain.mastery.Threshold;
import org.jspecify.annotations.Nullable;

/**
 * How often limits held the truth. Two ways of counting: of all dogs, where a limit that is absent
 * holds everything on its side; and of those with a threshold and both limits alone. For one
 * thread.
 */
public final class Coverage {

  private int dogs;
  private int held;
  private int above;
  private int below;
  private int unestimated;
  private int estimated;
  private int bothLimits;
  private int heldByBoth;
  private int withoutLower;
  private int withoutUpper;

  /** Counts what was said of a dog whose threshold is really there. */
  public void count(Threshold said, double truth) {
    dogs++;
    switch (said) {
      case Threshold.Estimated it -> {
        estimated++;
        withoutLower += it.lower() == null ? 1 : 0;
        withoutUpper += it.upper() == null ? 1 : 0;
        boolean holds = hold(it.lower(), it.upper(), truth);
        if (it.lower() != null && it.upper() != null) {
          bothLimits++;
          heldByBoth += holds ? 1 : 0;
        }
      }
      case Threshold.BeyondTried it -> unestimated(it.lower(), null, truth);
      case Threshold.BelowTried it -> unestimated(null, it.upper(), truth);
      case Threshold.NoFall() -> unestimated(null, null, truth);
      case Threshold.NotEnoughReps() -> unestimated(null, null, truth);
    }
  }

  private void unestimated(@Nullable Double lower, @Nullable Double upper, double truth) {
    unestimated++;
    hold(lower, upper, truth);
  }

  private boolean hold(@Nullable Double lower, @Nullable Double upper, double truth) {
    if (lower != null && truth < lower) {
      below++;
      return false;
    }
    if (upper != null && truth > upper) {
      above++;
      return false;
    }
    held++;
    return true;
  }

  /** How many dogs there were. */
  public int dogs() {
    return dogs;
  }

  /** The share of all dogs whose limits, as far as they have any, hold the truth. */
  public String heldOfAll() {
    return percent(held, dogs);
  }

  /** The share of all dogs whose truth lies below their lower limit. */
  public String below() {
    return percent(below, dogs);
  }

  /** The share of all dogs whose truth lies above their upper limit. */
  public String above() {
    return percent(above, dogs);
  }

  /** Of those with a threshold and both limits, the share whose limits hold the truth. */
  public String heldByBothLimits() {
    return percent(heldByBoth, bothLimits);
  }

  /** The share of all dogs without a threshold: beyond or below what was tried, or no fall. */
  public String unestimatedOfAll() {
    return percent(unestimated, dogs);
  }

  /** Of those with a threshold, the share without a lower limit. */
  public String lackingLower() {
    return percent(withoutLower, estimated);
  }

  /** Of those with a threshold, the share without an upper limit. */
  public String lackingUpper() {
    return percent(withoutUpper, estimated);
  }

  private static String percent(int some, int of) {
    return of == 0 ? "–" : "%.1f%%".formatted(100.0 * some / of);
  }
}
