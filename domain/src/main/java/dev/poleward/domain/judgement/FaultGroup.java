package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import java.util.Map;

/**
 * Reps that have something in common, and the faults among them.
 *
 * @param of what they have in common
 * @param reps how many there were
 * @param faults how many ended in each fault that occurred
 * @param share of reps with a fault, with Wilson's limits of 95%
 * @param standsOut whether even the lower limit is above the share of all reps
 */
public record FaultGroup<K>(
    K of, int reps, Map<Outcome, Integer> faults, Estimate share, boolean standsOut) {

  static <K> FaultGroup<K> of(K of, FaultTally tally, double shareOfAll) {
    Estimate share =
        new Proportion(tally.faulty(), tally.reps() - tally.faulty())
            .wilson(Confidence.OF_95_PERCENT);
    return new FaultGroup<>(
        of, tally.reps(), tally.faults(), share, share.lower() > shareOfAll && tally.faulty() > 0);
  }

  /** How many ended in any fault. */
  public int faulty() {
    return faults.values().stream().mapToInt(Integer::intValue).sum();
  }
}
