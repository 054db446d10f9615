package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.programme.RewardLadder;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.List;

/** Which step of a ladder a rep's rewards are nearest to. */
public final class StepOfLadder {

  private static final int PLACES = RewardPlace.values().length;
  private static final int KINDS = RewardKind.values().length;

  private StepOfLadder() {}

  /**
   * The step of every rep. A miss is often not rewarded, and of some reps nothing is said of
   * rewards: they stand where the clean rep before stood of which it is said, and are left out
   * before the first of those.
   *
   * @param reps ascending (time, id), without void and helped ones
   */
  public static List<RewardedRep> of(RewardLadder ladder, List<PlacedRep> reps) {
    List<int[]> steps = ofSteps(ladder);
    List<RewardedRep> rewarded = new ArrayList<>();
    for (PlacedRep rep : reps) {
      boolean clean = rep.outcome() == Outcome.CLEAN;
      List<Reward> rewards = rep.details().rewards();
      if (clean && rewards != null) {
        rewarded.add(new RewardedRep(nearest(steps, counted(rewards)), true));
      } else if (!rewarded.isEmpty()) {
        rewarded.add(new RewardedRep(rewarded.getLast().step(), clean));
      }
    }
    return List.copyOf(rewarded);
  }

  /**
   * Index of the step that differs by the fewest rewards, counted apart along the poles and at the
   * exit, food and toys; of steps that differ by as many, the richest.
   */
  public static int nearest(RewardLadder ladder, List<Reward> rewards) {
    return nearest(ofSteps(ladder), counted(rewards));
  }

  private static List<int[]> ofSteps(RewardLadder ladder) {
    return ladder.steps().stream().map(step -> counted(step.rewards())).toList();
  }

  private static int nearest(List<int[]> steps, int[] rewards) {
    int nearest = 0;
    int least = Integer.MAX_VALUE;
    for (int step = 0; step < steps.size(); step++) {
      int difference = difference(steps.get(step), rewards);
      if (difference < least) {
        nearest = step;
        least = difference;
      }
    }
    return nearest;
  }

  private static int difference(int[] some, int[] others) {
    int difference = 0;
    for (int i = 0; i < some.length; i++) {
      difference += Math.abs(some[i] - others[i]);
    }
    return difference;
  }

  /** How many of each kind at each place. */
  private static int[] counted(List<Reward> rewards) {
    int[] counted = new int[PLACES * KINDS];
    for (Reward reward : rewards) {
      counted[reward.at().ordinal() * KINDS + reward.kind().ordinal()] +=
          reward.count() == null ? 1 : reward.count();
    }
    return counted;
  }
}
