package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.programme.Programme;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a dog stands in its programme.
 *
 * @param stages in the order in which they can be gone through
 * @param forgetting how it forgets what it knew
 * @param agedTo until when days without practice were counted
 */
public record DogStanding(
    Programme programme, List<StageStanding> stages, Forgetting forgetting, Instant agedTo) {

  /** Keeps the stages from changing. */
  public DogStanding {
    stages = List.copyOf(stages);
  }

  /** The first stage that has its turn, probes and pressure left aside; empty when finished. */
  public Optional<StageStanding> current() {
    return stages.stream()
        .filter(each -> each.state() == StageState.OPEN && ProgrammeEnd.asksFor(each.stage()))
        .findFirst();
  }

  /** Whether the dog is through: all stages that the programme's end asks for are done. */
  public boolean finished() {
    return stages.stream()
        .filter(each -> ProgrammeEnd.asksFor(each.stage()))
        .allMatch(each -> each.state() == StageState.DONE);
  }

  /** Whether it has come to a stage in which the handler crowds it. */
  public boolean mayCrowd() {
    return stages.stream()
        .filter(each -> each.state() != StageState.LOCKED)
        .flatMap(each -> each.stage().handlings().stream())
        .anyMatch(handling -> handling.manoeuvre() == Manoeuvre.PRESSURE);
  }

  /** All that verdicts are about, stage by stage. */
  public List<PoolStanding> pools() {
    return stages.stream().flatMap(each -> each.pools().stream()).toList();
  }

  /**
   * When each slip began that still stands, in the programme's order. Rungs count as they are run:
   * two stages that judge the same reps, for instance poles alone from where a jump will be and a
   * stage without lead-in, see one slip, which began when the first of them saw it.
   */
  public List<Instant> slips() {
    Map<RungAsRun, Instant> slips = new LinkedHashMap<>();
    for (PoolStanding pool : pools()) {
      Instant since = pool.slippedSince();
      if (since != null) {
        slips.merge(
            RungAsRun.of(pool.pool()), since, (one, other) -> one.isBefore(other) ? one : other);
      }
    }
    return List.copyOf(slips.values());
  }
}
