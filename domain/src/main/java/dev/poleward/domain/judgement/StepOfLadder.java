package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.programme.RewardLadder;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Which step of a ladder a rep's rewards are nearest to. */
public final class StepOfLadder {

  private StepOfLadder() {}

  /**
   * The step of every rep. A miss is often not rewarded, and of some reps nothing is said of
   * rewards: they stand where the clean rep before stood of which it is said, and are left out
   * before the first of those.
   *
   * @param reps ascending (time, id), without void and helped ones
   */
  public static List<RewardedRep> of(RewardLadder ladder, List<PlacedRep> reps) {
    List<RewardedRep> rewarded = new ArrayList<>();
    for (PlacedRep rep : reps) {
      boolean clean = rep.outcome() == Outcome.CLEAN;
      List<Reward> rewards = rep.details().rewards();
      if (clean && rewards != null) {
        rewarded.add(new RewardedRep(nearest(ladder, rewards), true));
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
    int nearest = 0;
    int least = Integer.MAX_VALUE;
    for (int step = 0; step < ladder.steps().size(); step++) {
      int difference = difference(ladder.steps().get(step).rewards(), rewards);
      if (difference < least) {
        nearest = step;
        least = difference;
      }
    }
    return nearest;
  }

  private static int difference(List<Reward> some, List<Reward> others) {
    int difference = 0;
    for (RewardPlace place : RewardPlace.values()) {
      for (RewardKind kind : RewardKind.values()) {
        Predicate<Reward> alike = reward -> reward.at() == place && reward.kind() == kind;
        difference += Math.abs(count(some, alike) - count(others, alike));
      }
    }
    return difference;
  }

  private static int count(List<Reward> rewards, Predicate<Reward> which) {
    return rewards.stream()
        .filter(which)
        .mapToInt(reward -> reward.count() == null ? 1 : reward.count())
        .sum();
  }
}
