package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageState;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What a session holds when nothing is to be learned, mended or refreshed, because the dog is
 * through or the day allows nothing of what comes next: a few reps of what was left alone longest,
 * so that it stays solid [C].
 */
final class Upkeep {

  /** Rungs of one session at most: each has to be laid out. */
  private static final int RUNGS_MAX = 4;

  /** Reps of one rung at most. */
  private static final int REPS_MAX = 3;

  private Upkeep() {}

  /** What was left alone longest first; of those the largest angle. */
  static List<Part> of(DogStanding dog, Ground ground, CleanForecast forecast) {
    Set<Place> places = new HashSet<>();
    List<Work> solid =
        dog.stages().stream()
            .filter(stage -> stage.state() != StageState.LOCKED)
            .flatMap(stage -> stage.pools().stream())
            .filter(PoolStanding::isSolid)
            .sorted(
                Comparator.comparing(Upkeep::lastRun)
                    .thenComparing(pool -> -pool.pool().rung().size()))
            .map(pool -> Work.of(pool, ground.allowed(pool), forecast))
            .filter(work -> !work.drills().isEmpty())
            .filter(work -> work.expected() >= dog.programme().cleanFloor())
            .filter(work -> places.add(Place.of(work.drills().getFirst())))
            .limit(RUNGS_MAX)
            .toList();
    int reps = Math.ceilDiv(ground.limits().reps(), Math.max(1, solid.size()));
    return solid.stream().map(work -> new Part(work, Math.min(REPS_MAX, reps))).toList();
  }

  private static Instant lastRun(PoolStanding pool) {
    return Objects.requireNonNullElse(pool.practised(), Instant.MIN);
  }
}
