package dev.poleward.load.plan;

import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a dog can really do of the rungs that it was passed on: fewer reps are no gain, if less is
 * learned by them. Probes are left out.
 */
final class Passed {

  /** Who can do no more was passed too soon: the default programme calls that not there yet. */
  static final double NOT_YET = 0.65;

  private final Set<DrillOfStage> seen = new HashSet<>();
  private final List<Double> whenPassed = new ArrayList<>();

  /** Looks at what was passed since it looked last. */
  void look(Trainee dog) {
    for (StageStanding stage : asked(dog)) {
      for (PoolStanding pool : stage.pools()) {
        if (pool.isBehind() && seen.add(first(pool))) {
          whenPassed.add(chance(dog, pool));
        }
      }
    }
  }

  /** True chance of a clean rep, the dog fresh, over the handlings of a rung as it was passed. */
  List<Double> whenPassed() {
    return List.copyOf(whenPassed);
  }

  /** The same now, over all rungs. */
  static double now(Trainee dog) {
    return asked(dog).stream()
        .flatMap(stage -> stage.pools().stream())
        .mapToDouble(pool -> chance(dog, pool))
        .average()
        .orElse(0);
  }

  private static List<StageStanding> asked(Trainee dog) {
    return dog.standing().stages().stream()
        .filter(stage -> Through.asksFor(stage.stage()) && !stage.isProbe())
        .toList();
  }

  private static DrillOfStage first(PoolStanding pool) {
    return new DrillOfStage(pool.stage().id(), pool.pool().drills().getFirst());
  }

  private static double chance(Trainee dog, PoolStanding pool) {
    return pool.pool().drills().stream()
        .mapToDouble(drill -> dog.chanceWhenFresh(new DrillOfStage(pool.stage().id(), drill)))
        .average()
        .orElse(0);
  }
}
