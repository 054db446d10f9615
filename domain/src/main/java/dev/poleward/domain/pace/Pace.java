package dev.poleward.domain.pace;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How fast a dog weaves, and whether that changes.
 *
 * @param kinds by poles, then by entry side
 * @param notClean timed reps that are void, faulty or helped
 * @param withoutPoles timed reps of which nobody knows how many poles stood
 * @param implausible timed reps that are faster than a dog can be
 */
public record Pace(
    List<PaceOfKind> kinds, int notClean, int withoutPoles, int implausible, Slowing slowing) {

  /** Gaps a second; what is faster is an error of the timing. */
  public static final double GAPS_A_SECOND_MAX = CountedRuns.GAPS_A_SECOND_MAX;

  /**
   * Of timed reps, ascending by (time, id).
   *
   * @param from the times are of reps from here on; whether the dog slows is a matter of its own
   *     span
   * @param until the end, itself outside
   * @param zone of the club's days
   */
  public static Pace of(List<TimedRep> reps, Instant from, Instant until, ZoneId zone) {
    CountedRuns counted =
        CountedRuns.of(
            reps.stream()
                .filter(timed -> !timed.rep().moment().time().isBefore(from))
                .filter(timed -> timed.rep().moment().time().isBefore(until))
                .toList());
    Map<RunKind, List<CleanRun>> byKind =
        counted.runs().stream()
            .collect(Collectors.groupingBy(CleanRun::kind, TreeMap::new, Collectors.toList()));
    return new Pace(
        byKind.entrySet().stream()
            .map(kind -> PaceOfKind.of(kind.getKey(), kind.getValue(), zone))
            .toList(),
        counted.notClean(),
        counted.withoutPoles(),
        counted.implausible(),
        Slowing.of(reps, null, until, zone));
  }
}
