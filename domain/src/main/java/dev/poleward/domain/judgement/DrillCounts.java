package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a dog has run, drill by drill.
 *
 * @param drills the one run last first; of those run last at one instant, the lesser first
 * @param notPlaced reps that are of no drill, for nobody knows what stood or where the dog started
 * @param voided reps that count for nothing
 */
public record DrillCounts(List<DrillCount> drills, int notPlaced, int voided) {

  private static final Comparator<DrillCount> LATEST_FIRST =
      Comparator.comparing(DrillCount::last).reversed().thenComparing(DrillCount::drill);

  /** Keeps the drills from changing. */
  public DrillCounts {
    drills = List.copyOf(drills);
  }

  /** Counts the reps of one dog, ascending by (time, id). */
  public static DrillCounts of(List<PlacedRep> reps) {
    Map<DrillRun, List<PlacedRep>> run = new HashMap<>();
    int notPlaced = 0;
    int voided = 0;
    for (PlacedRep rep : reps) {
      if (rep.outcome() == Outcome.VOID) {
        voided++;
        continue;
      }
      Optional<DrillRun> drill = DrillRun.of(rep);
      if (drill.isPresent()) {
        run.computeIfAbsent(drill.get(), _ -> new ArrayList<>()).add(rep);
      } else {
        notPlaced++;
      }
    }
    return new DrillCounts(
        run.entrySet().stream()
            .map(each -> DrillCount.of(each.getKey(), each.getValue()))
            .sorted(LATEST_FIRST)
            .toList(),
        notPlaced,
        voided);
  }
}
