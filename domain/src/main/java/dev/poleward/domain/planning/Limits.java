package dev.poleward.domain.planning;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.Drill;
import java.util.Set;

/**
 * What one session may hold.
 *
 * @param reps how many, from 1
 * @param gaps passed in all, from 0
 * @param sharpBends entries from beyond {@link #SHARP_BEND_DEGREES} degrees in all, from 0
 * @param poles the most that may stand
 * @param angleWork whether entries may be turned at all
 * @param sides entry sides that are wanted
 * @param pressure whether the handler may crowd the dog where it is solid
 */
public record Limits(
    int reps,
    int gaps,
    int sharpBends,
    int poles,
    boolean angleWork,
    Set<EntrySide> sides,
    boolean pressure) {

  /** An entry from beyond is a sharp bend. */
  public static final double SHARP_BEND_DEGREES = 60;

  /** Keeps the sides from changing. */
  public Limits {
    sides = Set.copyOf(sides);
  }

  /** So many reps and nothing else. */
  public static Limits ofReps(int reps) {
    return new Limits(
        reps, Integer.MAX_VALUE, Integer.MAX_VALUE, 24, true, Set.of(EntrySide.values()), false);
  }

  static boolean isSharp(Drill drill) {
    return drill.rung().size() > SHARP_BEND_DEGREES;
  }
}
