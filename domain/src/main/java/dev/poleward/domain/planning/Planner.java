package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.List;
import java.util.Optional;

/**
 * Makes a session that begins and ends with something solid, or with what can be expected to go as
 * well as that; between them lies what {@link SessionMaking} chooses.
 *
 * <p>Learns nothing and draws nothing: the same question has the same answer.
 */
public final class Planner {

  /**
   * So many reps of lessons in one session, however long it may be [C]: with more, simulated dogs
   * learn less from what comes behind; with fewer they need more weeks.
   */
  public static final int LESSON_REPS_MAX = 12;

  private Planner() {}

  /** The plan for a dog that stands there and can be expected to do as well as that. */
  public static SessionPlan plan(
      DogStanding dog, CleanForecast forecast, Available available, Limits limits) {
    Outset outset = Outset.of(dog, forecast, available, limits);
    List<PlanBlock> asItComes = new SessionMaking(outset, null).blocks();
    if (asItComes.isEmpty() || endsWell(asItComes, outset)) {
      return new SessionPlan(asItComes);
    }
    Optional<DrillOfStage> end = outset.end(asItComes.getLast().drill());
    return new SessionPlan(
        end.map(drill -> new SessionMaking(outset, drill).blocks()).orElse(asItComes));
  }

  private static boolean endsWell(List<PlanBlock> blocks, Outset outset) {
    return blocks.getLast().purpose() != PlanBlock.Purpose.PROBE
        && blocks.getLast().expected().value() >= outset.target()
        && outset.otherSide().isServedBy(blocks);
  }
}
