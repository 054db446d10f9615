package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.jspecify.annotations.Nullable;

/**
 * Reps put into groups, and whether faults are spread evenly over them, as the reps are.
 *
 * @param groups ascending
 * @param chance of a spread as uneven or more, were all groups alike: Pearson's chi-square on
 *     groups by clean or not; null where any number expected is below {@value #EXPECTED_MIN}, or
 *     there is but one group
 */
public record FaultGroups<K extends Comparable<K>>(
    List<FaultGroup<K>> groups, @Nullable Double chance) {

  /** Below it chi-square is not to be trusted (the usual rule, Cochran 1954, Biometrics 10:417). */
  public static final double EXPECTED_MIN = 5;

  /** Keeps the groups from changing. */
  public FaultGroups {
    groups = List.copyOf(groups);
  }

  /** Collects reps. For one thread. */
  static final class Collecting<K extends Comparable<K>> {

    private final Map<K, FaultTally> tallies = new TreeMap<>();

    void add(K of, Outcome outcome) {
      tallies.computeIfAbsent(of, _ -> new FaultTally()).add(outcome);
    }

    FaultGroups<K> done() {
      int reps = tallies.values().stream().mapToInt(FaultTally::reps).sum();
      int faulty = tallies.values().stream().mapToInt(FaultTally::faulty).sum();
      double share = reps == 0 ? 0 : (double) faulty / reps;
      List<FaultGroup<K>> groups = new ArrayList<>();
      tallies.forEach(
          (of, tally) -> groups.add(FaultGroup.of(of, tally, reps, faulty, tallies.size())));
      return new FaultGroups<>(groups, chance(groups, share));
    }
  }

  private static <K> @Nullable Double chance(List<FaultGroup<K>> groups, double share) {
    double statistic = 0;
    for (FaultGroup<K> group : groups) {
      double faults = group.reps() * share;
      double clean = group.reps() * (1 - share);
      if (faults < EXPECTED_MIN || clean < EXPECTED_MIN) {
        return null;
      }
      double difference = group.faulty() - faults;
      statistic += difference * difference / faults + difference * difference / clean;
    }
    return groups.size() < 2
        ? null
        : ChiSquaredDistribution.of(groups.size() - 1).survivalProbability(statistic);
  }
}
