package dev.poleward.load.plan;

import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.planning.Available;
import dev.poleward.domain.planning.CleanForecast;
import dev.poleward.domain.planning.Limits;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.Planner;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Runs what the planner says: each block until its reps are run or its verdict comes to be to move
 * on; after two misses running on one rung, whatever the handling, one rep of what is easier, and
 * on to the next rung. What was passed before the session is run for its own sake, as a stepping
 * stone that happens to lie on a rung is: that ends nothing.
 */
public final class ByPlan implements Trainer {

  private final PlanWitness witness;
  private final Map<Spent, Integer> spent = new EnumMap<>(Spent.class);

  /** Trains with nobody looking on. */
  public ByPlan() {
    this(PlanWitness.NONE);
  }

  /** Lets somebody look on. */
  ByPlan(PlanWitness witness) {
    this.witness = witness;
  }

  @Override
  public void train(Trainee dog, int repsMax) {
    SessionPlan plan =
        Planner.plan(
            dog.standing(),
            CleanForecast.of(dog.reps(), dog.now()),
            Available.EVERYTHING,
            Limits.ofReps(repsMax));
    witness.begins(plan, dog);
    run(dog, plan.blocks());
  }

  /** Misses running count for as long as the rung stays, whatever the handling. */
  private void run(Trainee dog, List<PlanBlock> blocks) {
    Set<DrillOfStage> passedBefore = passed(dog, blocks);
    int missed = 0;
    for (int i = 0; i < blocks.size(); i++) {
      PlanBlock block = blocks.get(i);
      boolean sameRung = i > 0 && isOnOneRung(block, blocks.get(i - 1));
      if (!sameRung) {
        missed = 0;
      }
      for (int rep = 0;
          rep < block.reps() && missed < 2 && goesOn(dog, block, passedBefore);
          rep++) {
        witness.runs(block, dog);
        boolean clean = dog.run(block.drill());
        witness.ran(block, clean);
        missed = clean ? 0 : missed + 1;
        spent.merge(spentOn(block, dog, passedBefore), 1, Integer::sum);
        if (missed == 2 && block.fallback() != null && hasMore(blocks, i, rep)) {
          dog.run(block.fallback());
          spent.merge(Spent.EASIER, 1, Integer::sum);
        }
      }
    }
  }

  private static Set<DrillOfStage> passed(Trainee dog, List<PlanBlock> blocks) {
    return blocks.stream()
        .filter(block -> isPassed(dog, block))
        .map(PlanBlock::drill)
        .collect(Collectors.toSet());
  }

  private static boolean goesOn(Trainee dog, PlanBlock block, Set<DrillOfStage> passedBefore) {
    return passedBefore.contains(block.drill()) || !isPassed(dog, block);
  }

  private static Spent spentOn(PlanBlock block, Trainee dog, Set<DrillOfStage> passedBefore) {
    boolean isTest = dog.isDrill(block.drill()) && !passedBefore.contains(block.drill());
    return Spent.on(block, isTest);
  }

  private static boolean isPassed(Trainee dog, PlanBlock block) {
    return isTested(block)
        && dog.isDrill(block.drill())
        && dog.judgement(block.drill()).verdict() instanceof Verdict.MoveOn;
  }

  private static boolean isTested(PlanBlock block) {
    return switch (block.purpose()) {
      case WORK, PROBE -> true;
      case WARM_UP, MEND, REFRESH, KEEP, FINISH -> false;
    };
  }

  private static boolean hasMore(List<PlanBlock> blocks, int at, int rep) {
    return rep + 1 < blocks.get(at).reps()
        || (at + 1 < blocks.size() && isOnOneRung(blocks.get(at), blocks.get(at + 1)));
  }

  private static boolean isOnOneRung(PlanBlock one, PlanBlock other) {
    return one.drill().stage().equals(other.drill().stage())
        && one.drill().drill().runUp().equals(other.drill().drill().runUp())
        && one.drill().drill().rung().equals(other.drill().drill().rung());
  }

  /** What reps were spent on so far. */
  Map<Spent, Integer> spent() {
    return Map.copyOf(spent);
  }
}
