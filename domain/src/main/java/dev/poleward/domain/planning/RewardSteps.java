package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Entries;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.PlacedRep;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** On which step of its stage's reward ladder each drill is to be run next. */
public final class RewardSteps {

  private final Map<String, Step> ofStages = new HashMap<>();
  private final CleanForecast forecast;

  /**
   * Of what is not new.
   *
   * @param tolerance degrees by which a drill may lie farther out than what the dog knows
   */
  private record Step(int next, double tolerance) {

    int richer() {
      return Math.max(0, next - 1);
    }
  }

  private RewardSteps(CleanForecast forecast) {
    this.forecast = forecast;
  }

  /**
   * Looks at how rewards faded in each stage, and goes a step down, stays or goes a step up.
   *
   * @param reps of the dog, ascending by (time, id)
   * @param forecast made of the same reps: it knows where the dog was clean
   */
  public static RewardSteps of(
      StandingReading reading, List<PlacedRep> reps, CleanForecast forecast) {
    RewardSteps steps = new RewardSteps(forecast);
    StageRewards.of(reading, reps).forEach(steps::add);
    return steps;
  }

  private void add(StageRewards rewards) {
    Stage stage = rewards.stage();
    double tolerance = stage.terms().toleranceDegrees() + Entries.SLIVER_DEGREES;
    ofStages.put(stage.id(), new Step(rewards.nextStep(), tolerance));
  }

  /**
   * The step of a drill, from 0 for the richest: its stage's, and one richer where the dog was not
   * clean with so many poles, after that run-up, on that entry side and from so far out before [C].
   */
  public int of(DrillOfStage drill) {
    Step step = ofStages.get(drill.stage());
    if (step == null) {
      return 0;
    }
    return forecast.wasClean(drill.drill(), step.tolerance()) ? step.next() : step.richer();
  }
}
