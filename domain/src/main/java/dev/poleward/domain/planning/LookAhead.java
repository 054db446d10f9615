package dev.poleward.domain.planning;

import dev.poleward.domain.care.CareLimits;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageState;
import java.time.Duration;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

/**
 * What of the probes a session may hold: more poles than the dog has learned on, straight on. A
 * probe that fails costs the dog nothing in its programme, but reps, gaps and some of its trust; so
 * it is tried when it can be expected to hold, now and then, and one at a time [C].
 */
final class LookAhead {

  /** Expected share from which a probe is tried: two of three then hold in three of four [D]. */
  static final double SHARE_MIN = 0.7;

  /** After a probe that failed the dog learns first. */
  static final Duration BETWEEN_LOOKS = Duration.ofDays(14);

  /** After as long without practice the dog begins with what is easy and short [C]. */
  static final Duration LONG_BREAK = Duration.ofDays(CareLimits.USUAL.breakDays());

  /** One rep in so many at most of what the day allows of them. */
  private static final int ONE_IN = 2;

  private final DogStanding dog;
  private final Ground ground;
  private final CleanForecast forecast;

  LookAhead(DogStanding dog, Ground ground, CleanForecast forecast) {
    this.dog = dog;
    this.ground = ground;
    this.forecast = forecast;
  }

  /** What can be expected to go best of all that may be tried today. */
  Optional<Part> today() {
    return comesBack() ? Optional.empty() : best();
  }

  private Optional<Part> best() {
    return dog.stages().stream()
        .filter(stage -> stage.state() == StageState.OPEN && stage.isProbe())
        .flatMap(stage -> stage.pools().stream().filter(stage::isTurnOf))
        .filter(this::hasItsTime)
        .map(pool -> Work.of(pool, ground.allowed(pool), forecast))
        .filter(work -> work.withinReach() && work.expected() >= SHARE_MIN)
        .max(Comparator.comparingDouble(Work::expected))
        .map(work -> new Part(work, reps(work)))
        .filter(part -> part.reps() > 0);
  }

  /** None where there is not room enough for the probe to hold. */
  private int reps(Work work) {
    Limits limits = ground.limits();
    int gapsOfRep = work.drills().getFirst().poles() - 1;
    int room = Math.min(limits.reps(), limits.gaps() / gapsOfRep) / ONE_IN;
    return room < work.standing().judgement().cleanRepsToDecide()
        ? 0
        : Math.min(work.repsToBeSure(), room);
  }

  private boolean comesBack() {
    return dog.pools().stream()
        .map(PoolStanding::practised)
        .filter(Objects::nonNull)
        .max(Comparator.naturalOrder())
        .map(last -> !last.plus(LONG_BREAK).isAfter(dog.agedTo()))
        .orElse(false);
  }

  private boolean hasItsTime(PoolStanding pool) {
    return pool.practised() == null || !pool.practised().plus(BETWEEN_LOOKS).isAfter(dog.agedTo());
  }
}
