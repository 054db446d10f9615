package dev.poleward.load.plan;

import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.planning.Available;
import dev.poleward.domain.planning.CleanForecast;
import dev.poleward.domain.planning.Limits;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.Planner;
import dev.poleward.domain.planning.SessionPlan;

/**
 * Runs what the planner says: each block until its reps are run or its verdict is to move on; after
 * two misses running one rep of what is easier, and on to the next block.
 */
final class ByPlan implements Trainer {

  @Override
  public void train(Trainee dog, int repsMax) {
    SessionPlan plan =
        Planner.plan(
            dog.standing(),
            CleanForecast.of(dog.reps(), dog.now()),
            Available.EVERYTHING,
            Limits.ofReps(repsMax));
    for (PlanBlock block : plan.blocks()) {
      run(dog, block);
    }
  }

  private static void run(Trainee dog, PlanBlock block) {
    int missed = 0;
    for (int rep = 0; rep < block.reps(); rep++) {
      if (block.purpose() == PlanBlock.Purpose.WORK
          && dog.isDrill(block.drill())
          && dog.judgement(block.drill()).verdict() instanceof Verdict.MoveOn) {
        return;
      }
      missed = dog.run(block.drill()) ? 0 : missed + 1;
      if (missed == 2) {
        if (block.fallback() != null && rep + 1 < block.reps()) {
          dog.run(block.fallback());
        }
        return;
      }
    }
  }
}
