package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.Programme;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a dog stands in its programme.
 *
 * @param stages in the order in which they can be gone through
 * @param retention how it forgets what it knew
 * @param agedTo until when days without practice were counted
 */
public record DogStanding(
    Programme programme, List<StageStanding> stages, Retention retention, Instant agedTo) {

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

  /** All that verdicts are about, stage by stage. */
  public List<PoolStanding> pools() {
    return stages.stream().flatMap(each -> each.pools().stream()).toList();
  }

  /** When each slip began that still stands, in the programme's order. */
  public List<Instant> slips() {
    return pools().stream().map(PoolStanding::slippedSince).filter(Objects::nonNull).toList();
  }
}
