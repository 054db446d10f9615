package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.programme.RungPool;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A rung as a dog runs it, whichever stage asks for it: the dog cannot tell two stages apart that
 * ask for the same.
 *
 * @param runUps as run: the wraps to either side are one rung
 */
record RungAsRun(int poles, Set<RunUp> runUps, Rung rung) {

  static RungAsRun of(RungPool pool) {
    return new RungAsRun(
        pool.drills().getFirst().poles(),
        pool.drills().stream()
            .map(Drill::runUp)
            .map(RunUp::asRun)
            .collect(Collectors.toUnmodifiableSet()),
        pool.rung());
  }
}
