package dev.poleward.domain.planning;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillState;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Handling;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which drills can be laid out today, and may be.
 *
 * @param calm where the dog is solid today while nobody crowds it
 */
record Ground(Available available, Limits limits, Set<Place> calm) {

  static Ground of(Available available, Limits limits, DogStanding dog) {
    return new Ground(
        available,
        limits,
        dog.pools().stream()
            .filter(PoolStanding::isSolid)
            .flatMap(pool -> pool.pool().drills().stream())
            .filter(drill -> !isPressure(drill))
            .map(Place::of)
            .collect(Collectors.toUnmodifiableSet()));
  }

  static boolean isPressure(Drill drill) {
    return drill.handling().manoeuvre() == Manoeuvre.PRESSURE;
  }

  List<Drill> allowed(PoolStanding pool) {
    return pool.pool().drills().stream()
        .filter(drill -> available.allows(drill) && limits.allow(drill))
        .filter(drill -> !isPressure(drill) || isCalm(pool, drill))
        .toList();
  }

  /** Nobody crowds a dog where it cannot be relied on when it is left alone. */
  private boolean isCalm(PoolStanding pool, Drill drill) {
    return calm.contains(Place.of(drill)) || lacksNothingButPressure(pool);
  }

  /** A rung that lists pressure among others can be solid only once pressure was clean too. */
  private static boolean lacksNothingButPressure(PoolStanding pool) {
    List<Handling> missing = pool.judgement().missing();
    return pool.state() == DrillState.LEARNING
        && pool.judgement().verdict() instanceof Verdict.Undecided
        && pool.pool().drills().stream().anyMatch(drill -> !isPressure(drill))
        && pool.judgement().cleanRepsToDecide() <= missing.size()
        && missing.stream().allMatch(handling -> handling.manoeuvre() == Manoeuvre.PRESSURE);
  }

  Stream<DrillOfStage> drills(PoolStanding pool) {
    return allowed(pool).stream().map(drill -> new DrillOfStage(pool.stage().id(), drill));
  }
}
