package dev.poleward.domain.report;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.record.PlacedRep;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How many reps there were, and how many of them clean.
 *
 * @param reps those without help, void ones left out
 * @param clean how many of them had no fault
 * @param helped those with help, void ones left out
 * @param voided for which no dog was to blame
 */
public record RepTally(int reps, int clean, int helped, int voided) {

  /** Counts any reps. */
  public static RepTally of(List<PlacedRep> all) {
    int reps = 0;
    int clean = 0;
    int helped = 0;
    int voided = 0;
    for (PlacedRep rep : all) {
      if (rep.outcome() == Outcome.VOID) {
        voided++;
      } else if (rep.isHelped()) {
        helped++;
      } else {
        reps++;
        clean += rep.outcome() == Outcome.CLEAN ? 1 : 0;
      }
    }
    return new RepTally(reps, clean, helped, voided);
  }

  /** All of them, of whatever kind. */
  public int all() {
    return reps + helped + voided;
  }

  /** The share of clean ones with Wilson's limits of 95%; null of none. */
  public @Nullable Estimate cleanShare() {
    return reps == 0 ? null : new Proportion(clean, reps - clean).wilson(Confidence.OF_95_PERCENT);
  }
}
