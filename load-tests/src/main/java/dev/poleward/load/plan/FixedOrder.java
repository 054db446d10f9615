package dev.poleward.load.plan;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.List;
import java.util.Optional;

/**
 * The plain trainer: rung by rung as the programme lists them, all handlings of a rung in turn
 * until its verdict is to move on, then the next; after the programme's number of misses in a row
 * one rep of the rung before.
 */
final class FixedOrder implements Trainer {

  private int turn;

  @Override
  public void train(Trainee dog, int repsMax) {
    DogStanding standing = dog.standing();
    Optional<PoolStanding> pool = next(standing);
    for (int rep = 0; rep < repsMax && pool.isPresent(); rep++) {
      PoolStanding at = pool.get();
      if (dog.judgement(first(at)).verdict() instanceof Verdict.StepBack && easier(standing, at)) {
        dog.run(first(before(standing, at)));
        rep++;
      }
      List<Drill> drills = at.pool().drills();
      dog.run(new DrillOfStage(at.stage().id(), drills.get(turn++ % drills.size())));
      if (dog.judgement(first(at)).verdict() instanceof Verdict.MoveOn) {
        standing = dog.standing();
        pool = next(standing);
        turn = 0;
      }
    }
  }

  private static DrillOfStage first(PoolStanding pool) {
    return new DrillOfStage(pool.stage().id(), pool.pool().drills().getFirst());
  }

  private static Optional<PoolStanding> next(DogStanding standing) {
    return standing.stages().stream()
        .filter(stage -> Through.asksFor(stage.stage()))
        .map(StageStanding::pools)
        .flatMap(List::stream)
        .filter(pool -> !pool.isBehind())
        .findFirst();
  }

  private static boolean easier(DogStanding standing, PoolStanding pool) {
    return standing.pools().indexOf(pool) > 0;
  }

  private static PoolStanding before(DogStanding standing, PoolStanding pool) {
    return standing.pools().get(standing.pools().indexOf(pool) - 1);
  }
}
