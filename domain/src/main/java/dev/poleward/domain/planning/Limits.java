package dev.poleward.domain.planning;

import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.Load;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.Drill;
import java.util.Set;

/**
 * What one session may hold.
 *
 * @param reps how many, from 1
 * @param gaps passed in all, from 0
 * @param sharpBends entries from beyond {@link Load#SHARP_BEND_DEGREES} degrees in all, from 0
 * @param poles the most that may stand
 * @param sides entry sides that are wanted; none for straight on alone
 * @param pressure whether the handler may crowd the dog where it is solid
 */
public record Limits(
    int reps, int gaps, int sharpBends, int poles, Set<EntrySide> sides, boolean pressure) {

  /** Keeps the sides from changing. */
  public Limits {
    sides = Set.copyOf(sides);
  }

  /** So many reps and nothing else. */
  public static Limits ofReps(int reps) {
    return new Limits(
        reps, Integer.MAX_VALUE, Integer.MAX_VALUE, 24, Set.of(EntrySide.values()), false);
  }

  /** So many reps at most, within what the dog may be asked for. */
  public static Limits of(int reps, CarePermit permit, Set<EntrySide> sides, boolean pressure) {
    return new Limits(
        reps,
        permit.gapsMax(),
        permit.sharpBendsMax(),
        permit.polesMax(),
        permit.angleWork() ? sides : Set.of(),
        pressure);
  }

  /** Whether a rep of a drill fits into an empty session. */
  public boolean allow(Drill drill) {
    return drill.poles() <= poles
        && drill.poles() - 1 <= gaps
        && (!isSharp(drill) || sharpBends > 0)
        && (pressure || drill.handling().manoeuvre() != Manoeuvre.PRESSURE)
        && (drill.rung().side() == EntrySide.BOTH || sides.contains(drill.rung().side()));
  }

  static boolean isSharp(Drill drill) {
    return drill.rung().size() > Load.SHARP_BEND_DEGREES;
  }
}
