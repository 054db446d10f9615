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
 * @param standsOut whether so many faults or more are too rare, were all groups alike and any of
 *     them looked at
 */
public record FaultGroup<K>(
    K of, int reps, Map<Outcome, Integer> faults, Estimate share, boolean standsOut) {

  /** Of all there is: it stands out of nothing. */
  static <K> FaultGroup<K> ofAll(K of, FaultTally tally) {
    return new FaultGroup<>(of, tally.reps(), tally.faults(), share(tally), false);
  }

  /**
   * One of some groups. It stands out when the chance of so many of all faults falling on its reps
   * (Fisher's exact test, one-sided), times the number of groups, is at most 5% (Bonferroni).
   *
   * @param reps of all groups
   * @param faulty of all groups
   */
  static <K> FaultGroup<K> of(K of, FaultTally tally, int reps, int faulty, int groups) {
    double chance = Misfit.chance(tally.faulty(), tally.reps(), faulty, reps);
    boolean standsOut = groups > 1 && chance * groups <= 1 - Confidence.OF_95_PERCENT.level();
    return new FaultGroup<>(of, tally.reps(), tally.faults(), share(tally), standsOut);
  }

  private static Estimate share(FaultTally tally) {
    return new Proportion(tally.faulty(), tally.reps() - tally.faulty())
        .wilson(Confidence.OF_95_PERCENT);
  }

  /** How many ended in any fault. */
  public int faulty() {
    return faults.values().stream().mapToInt(Integer::intValue).sum();
  }
}
