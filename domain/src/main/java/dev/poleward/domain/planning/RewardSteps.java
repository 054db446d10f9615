package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.record.PlacedRep;
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
    RewardSteps steps = new RewardSteps();
    StageRewards.of(reading, reps)
        .forEach(stage -> steps.ofStages.put(stage.stage().id(), stage.nextStep()));
    return steps;
  }

  /** The step of a stage, from 0 for the richest. */
  public int of(String stage) {
    return ofStages.getOrDefault(stage, 0);
  }
}
