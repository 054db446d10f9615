package dev.poleward.domain.programme;

import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardDelivery;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import java.util.List;

/**
 * How rewards fade, step by step: several along the poles, then fewer, then one as the dog leaves
 * the last pole. A new side or angle starts further up again.
 *
 * @param steps from the richest on; never empty
 */
public record RewardLadder(List<RewardStep> steps) {

  /** The ladder of a programme that has none [C]. */
  public static final RewardLadder USUAL =
      new RewardLadder(
          List.of(
              new RewardStep(
                  "several along the poles",
                  List.of(
                      new Reward(RewardKind.FOOD, RewardPlace.GAP, 3, RewardDelivery.PLACED),
                      new Reward(RewardKind.FOOD, RewardPlace.EXIT, 1, RewardDelivery.PLACED))),
              new RewardStep(
                  "one along the poles, a toy at the end",
                  List.of(
                      new Reward(RewardKind.FOOD, RewardPlace.GAP, 1, RewardDelivery.PLACED),
                      new Reward(RewardKind.TOY, RewardPlace.EXIT, 1, RewardDelivery.THROWN))),
              new RewardStep(
                  "a toy at the end",
                  List.of(
                      new Reward(RewardKind.TOY, RewardPlace.EXIT, 1, RewardDelivery.THROWN)))));

  /** Refuses a ladder without steps. */
  public RewardLadder {
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("a ladder has steps");
    }
    steps = List.copyOf(steps);
  }
}
