package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.programme.DrillMatch;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How the reps of one stage were rewarded.
 *
 * @param reps that count, ascending by (time, id); void and helped ones are left out
 * @param rewarded the same as the ladder sees them; fewer where nothing was said of the first
 * @param fade how rewards faded, and what to do next
 * @param shared how many of the reps count for which other stage too, by its id; as poles alone do
 *     with a jump to come and without
 */
public record StageRewards(
    Stage stage,
    List<PlacedRep> reps,
    List<RewardedRep> rewarded,
    RewardFade fade,
    SortedMap<String, Integer> shared) {

  /** Keeps the lists from changing. */
  public StageRewards {
    reps = List.copyOf(reps);
    rewarded = List.copyOf(rewarded);
    shared = Collections.unmodifiableSortedMap(new TreeMap<>(shared));
  }

  /**
   * Of every stage of what the dog follows, in its order.
   *
   * @param reps of the dog, ascending by (time, id)
   */
  public static List<StageRewards> of(StandingReading reading, List<PlacedRep> reps) {
    Map<String, List<PlacedRep>> byStage = new HashMap<>();
    Map<String, SortedMap<String, Integer>> shared = new HashMap<>();
    for (PlacedRep rep : reps) {
      if (counts(rep) && reading.match(rep) instanceof DrillMatch.Counts(List<DrillOfStage> of)) {
        List<String> stages = of.stream().map(DrillOfStage::stage).distinct().toList();
        for (String stage : stages) {
          byStage.computeIfAbsent(stage, _ -> new ArrayList<>()).add(rep);
          stages.stream()
              .filter(other -> !other.equals(stage))
              .forEach(
                  other ->
                      shared
                          .computeIfAbsent(stage, _ -> new TreeMap<>())
                          .merge(other, 1, Integer::sum));
        }
      }
    }
    Programme programme = reading.programme();
    return programme.stages().stream()
        .map(
            stage ->
                of(
                    programme,
                    stage,
                    byStage.getOrDefault(stage.id(), List.of()),
                    shared.getOrDefault(stage.id(), new TreeMap<>())))
        .toList();
  }

  private static boolean counts(PlacedRep rep) {
    return rep.outcome() != Outcome.VOID && !rep.isHelped();
  }

  private static StageRewards of(
      Programme programme, Stage stage, List<PlacedRep> reps, SortedMap<String, Integer> shared) {
    List<RewardedRep> rewarded = StepOfLadder.of(stage.terms().rewardLadder(), reps);
    return new StageRewards(
        stage,
        reps,
        rewarded,
        RewardFade.of(
            rewarded,
            stage.terms().rewardLadder().steps().size(),
            programme.cleanTarget(),
            programme.cleanFloor()),
        shared);
  }

  /** The step that the last rep was rewarded by, from 0 for the richest; 0 before the first. */
  public int step() {
    return rewarded.isEmpty() ? 0 : rewarded.getLast().step();
  }

  /** The step to go on with. */
  public int nextStep() {
    int last = stage.terms().rewardLadder().steps().size() - 1;
    return switch (fade.advice()) {
      case FADE -> Math.min(last, step() + 1);
      case HOLD -> step();
      case RAISE -> Math.max(0, step() - 1);
    };
  }

  /** The rep that a {@link FadeStage#from()} speaks of. */
  public PlacedRep rep(int rewardedIndex) {
    return reps.get(reps.size() - rewarded.size() + rewardedIndex);
  }
}
