package dev.poleward.domain.programme;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.layout.EntryAngle;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A part of a programme.
 *
 * @param id unique within the programme
 * @param name what people call it
 * @param handlings a list, not a product
 * @param backChainSteps empty where the jump stands from the start, or none does
 * @param prerequisites ids of the stages that come before this one
 */
public record Stage(
    String id,
    @Nullable String name,
    StageGround ground,
    Entries entries,
    List<Handling> handlings,
    List<BackChainStep> backChainSteps,
    List<String> prerequisites,
    StageTerms terms) {

  /** Keeps the lists from changing. */
  public Stage {
    handlings = List.copyOf(handlings);
    backChainSteps = List.copyOf(backChainSteps);
    prerequisites = List.copyOf(prerequisites);
  }

  /** Its rungs, by the size of the angle, both sides of one size before the next. */
  public List<Rung> rungs() {
    return entries.rungs(ground.line());
  }

  /** The rung that a rep from there belongs to: the nearest within the stage's tolerance. */
  public Optional<Rung> rungOf(EntryAngle angle) {
    return NearestRung.of(this).to(angle);
  }

  /** Its run-ups: one, but for a jump that is added backwards. */
  public List<RunUp> runUps() {
    return RunUp.of(ground.leadIn(), backChainSteps);
  }

  /** Its drills, rung by rung, on each step by step, at each handling by handling. */
  public List<Drill> drills() {
    return pools().stream().flatMap(pool -> pool.drills().stream()).toList();
  }

  /** Its drills, put together as they are judged, rung by rung and on each step by step. */
  public List<RungPool> pools() {
    List<RungPool> pools = new ArrayList<>();
    List<RunUp> runUps = runUps();
    for (Rung rung : rungs()) {
      for (BackChainStep step : runUps.stream().map(RunUp::step).distinct().toList()) {
        List<Drill> drills = new ArrayList<>();
        for (RunUp runUp : runUps) {
          if (Objects.equals(runUp.step(), step)) {
            handlings.stream()
                .filter(handling -> handling.isAskedAt(rung))
                .map(handling -> new Drill(ground.line().poles(), runUp, rung, handling))
                .forEach(drills::add);
          }
        }
        pools.add(new RungPool(rung, step, drills));
      }
    }
    return pools;
  }
}
