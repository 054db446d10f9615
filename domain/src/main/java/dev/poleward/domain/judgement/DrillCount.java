package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.mastery.Success;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How often a drill was run, and how well. Helped reps are counted apart.
 *
 * @param reps those without help
 * @param clean how many of them had no fault
 * @param made how many of them made the entry
 * @param recent the last of them
 * @param helped those with help
 * @param first when it was first run, with help or without
 * @param last when it was last run, with help or without
 */
public record DrillCount(
    DrillRun drill,
    int reps,
    int clean,
    int made,
    Recent recent,
    int helped,
    Instant first,
    Instant last) {

  /** How many reps without help are recent. */
  public static final int RECENT_REPS = 10;

  /**
   * The last reps without help.
   *
   * @param clean how many of them had no fault
   * @param of how many there are, 0 to {@value #RECENT_REPS}
   */
  public record Recent(int clean, int of) {}

  /** Counts the reps of one drill, at least one, ascending by (time, id). */
  static DrillCount of(DrillRun drill, List<PlacedRep> reps) {
    int counted = 0;
    int clean = 0;
    int made = 0;
    int recent = 0;
    int recentClean = 0;
    for (int i = reps.size() - 1; i >= 0; i--) {
      PlacedRep rep = reps.get(i);
      if (!rep.isHelped()) {
        int isClean = rep.outcome() == Outcome.CLEAN ? 1 : 0;
        recent += counted < RECENT_REPS ? 1 : 0;
        recentClean += counted < RECENT_REPS ? isClean : 0;
        counted++;
        clean += isClean;
        made += Success.ENTRY.made(rep) ? 1 : 0;
      }
    }
    return new DrillCount(
        drill,
        counted,
        clean,
        made,
        new Recent(recentClean, recent),
        reps.size() - counted,
        reps.getFirst().moment().time(),
        reps.getLast().moment().time());
  }

  /** The share of clean ones with 95% limits; null when it was never run without help. */
  public @Nullable Estimate cleanShare() {
    return reps == 0 ? null : new Proportion(clean, reps - clean).wilson(Confidence.OF_95_PERCENT);
  }
}
