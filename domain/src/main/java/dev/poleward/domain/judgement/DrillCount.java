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
    List<PlacedRep> counted = reps.stream().filter(rep -> !rep.isHelped()).toList();
    List<PlacedRep> recent =
        counted.subList(Math.max(0, counted.size() - RECENT_REPS), counted.size());
    return new DrillCount(
        drill,
        counted.size(),
        clean(counted),
        (int) counted.stream().filter(Success.ENTRY::made).count(),
        new Recent(clean(recent), recent.size()),
        reps.size() - counted.size(),
        reps.getFirst().moment().time(),
        reps.getLast().moment().time());
  }

  private static int clean(List<PlacedRep> reps) {
    return (int) reps.stream().filter(rep -> rep.outcome() == Outcome.CLEAN).count();
  }

  /** The share of clean ones with 95% limits; null when it was never run without help. */
  public @Nullable Estimate cleanShare() {
    return reps == 0 ? null : new Proportion(clean, reps - clean).wilson(Confidence.OF_95_PERCENT);
  }
}
