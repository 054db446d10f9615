package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.FadeAdvice;
import dev.poleward.domain.judgement.RewardFade;
import dev.poleward.domain.judgement.RewardedRep;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.judgement.StepOfLadder;
import dev.poleward.domain.programme.DrillMatch;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RewardLadder;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** On which step of its reward ladder each stage is to be run next. */
public final class RewardSteps {

  private final Map<String, Integer> ofStages = new HashMap<>();

  private RewardSteps() {}

  /**
   * Looks at how rewards faded in each stage, and goes a step down, stays or goes a step up.
   *
   * @param reps of the dog, ascending by (time, id)
   */
  public static RewardSteps of(StandingReading reading, List<PlacedRep> reps) {
    Map<String, List<PlacedRep>> byStage = new HashMap<>();
    for (PlacedRep rep : reps) {
      if (reading.match(rep) instanceof DrillMatch.Counts(List<DrillOfStage> drills)) {
        drills.forEach(
            drill -> byStage.computeIfAbsent(drill.stage(), _ -> new ArrayList<>()).add(rep));
      }
    }
    RewardSteps steps = new RewardSteps();
    Programme programme = reading.programme();
    for (Stage stage : programme.stages()) {
      List<PlacedRep> ofStage = byStage.getOrDefault(stage.id(), List.of());
      steps.ofStages.put(stage.id(), step(stage.terms().rewardLadder(), ofStage, programme));
    }
    return steps;
  }

  private static int step(RewardLadder ladder, List<PlacedRep> reps, Programme programme) {
    List<RewardedRep> rewarded = StepOfLadder.of(ladder, reps);
    if (rewarded.isEmpty()) {
      return 0;
    }
    int last = ladder.steps().size() - 1;
    FadeAdvice advice =
        RewardFade.of(
                rewarded, ladder.steps().size(), programme.cleanTarget(), programme.cleanFloor())
            .advice();
    int now = rewarded.getLast().step();
    return switch (advice) {
      case FADE -> Math.min(last, now + 1);
      case HOLD -> now;
      case RAISE -> Math.max(0, now - 1);
    };
  }

  /** The step of a stage, from 0 for the richest. */
  public int of(String stage) {
    return ofStages.getOrDefault(stage, 0);
  }
}
