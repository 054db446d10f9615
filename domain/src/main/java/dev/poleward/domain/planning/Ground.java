package dev.poleward.domain.planning;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.List;
import java.util.stream.Stream;

/** Which drills can be laid out today, and may be. */
record Ground(Available available, Limits limits) {

  boolean allows(Drill drill) {
    return available.allows(drill) && limits.allow(drill);
  }

  List<Drill> allowed(PoolStanding pool) {
    return pool.pool().drills().stream()
        .filter(this::allows)
        .filter(drill -> drill.handling().manoeuvre() != Manoeuvre.PRESSURE || isReady(pool))
        .toList();
  }

  /** Nobody crowds a dog over what it cannot do yet when it is left alone. */
  private static boolean isReady(PoolStanding pool) {
    return pool.judgement().missing().stream()
        .allMatch(handling -> handling.manoeuvre() == Manoeuvre.PRESSURE);
  }

  Stream<DrillOfStage> drills(PoolStanding pool) {
    return allowed(pool).stream().map(drill -> new DrillOfStage(pool.stage().id(), drill));
  }
}
