package dev.poleward.domain.care;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What reps asked of a body. Void reps are counted: the dog ran them.
 *
 * @param gaps passed at most: n poles have n − 1
 * @param sharpBends entries from beyond {@link #SHARP_BEND_DEGREES} degrees
 * @param sessions in which they were run
 * @param poles the most that stood; 0 where nobody knows
 */
public record Load(int gaps, int sharpBends, int sessions, int poles) {

  /** An entry from beyond is a sharp bend. */
  public static final double SHARP_BEND_DEGREES = 60;

  /** The load from one instant on to before another. */
  public static Load of(List<PlacedRep> reps, Instant from, Instant until) {
    int gaps = 0;
    int sharpBends = 0;
    int poles = 0;
    Set<String> sessions = new HashSet<>();
    for (PlacedRep rep : reps) {
      Instant time = rep.moment().time();
      if (!time.isBefore(from) && time.isBefore(until)) {
        sessions.add(rep.session());
        Setup setup = rep.setup();
        EntryAngle angle = rep.angle();
        poles = Math.max(poles, setup == null ? 0 : setup.poles());
        gaps += setup == null ? 0 : setup.poles() - 1;
        sharpBends += angle != null && angle.size() > SHARP_BEND_DEGREES ? 1 : 0;
      }
    }
    return new Load(gaps, sharpBends, sessions.size(), poles);
  }
}
