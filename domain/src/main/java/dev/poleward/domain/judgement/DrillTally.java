package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.DrillOfStage;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Counts the reps of one drill as they come. For one thread. */
final class DrillTally {

  private int reps;
  private int clean;
  private int helped;

  /** The last reps without help, one bit each, the latest lowest. */
  private int recent;

  private @Nullable Instant lastRun;

  /** The same counts, to go on with elsewhere. */
  DrillTally copy() {
    DrillTally copy = new DrillTally();
    copy.reps = reps;
    copy.clean = clean;
    copy.helped = helped;
    copy.recent = recent;
    copy.lastRun = lastRun;
    return copy;
  }

  boolean hasReps() {
    return reps > 0;
  }

  void ran(boolean isClean, Instant time) {
    reps++;
    clean += isClean ? 1 : 0;
    recent = recent << 1 | (isClean ? 1 : 0);
    lastRun = time;
  }

  void helped(Instant time) {
    helped++;
    lastRun = time;
  }

  DrillStanding standing(DrillOfStage drill, DrillState ofPool) {
    int of = Math.min(reps, DrillCount.RECENT_REPS);
    int lately = Integer.bitCount(recent & (1 << DrillCount.RECENT_REPS) - 1);
    return new DrillStanding(
        drill, state(ofPool), reps, clean, new DrillCount.Recent(lately, of), helped, lastRun);
  }

  /** A rung is learned as a whole, but what was never run is untouched while it is learned. */
  private DrillState state(DrillState ofPool) {
    return reps == 0 && ofPool == DrillState.LEARNING ? DrillState.UNTOUCHED : ofPool;
  }
}
