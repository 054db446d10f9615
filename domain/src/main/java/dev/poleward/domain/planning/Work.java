package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.judgement.StageState;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.StageOrder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A rung that has its turn, with the drills of it that the session allows.
 *
 * @param drills those that were not clean yet first, then those that were run least
 * @param expected share of clean reps over them
 * @param withinReach whether the rung lies no farther beyond what the dog did than may be asked
 */
record Work(PoolStanding standing, List<Drill> drills, double expected, boolean withinReach) {

  /** Expected share from which a rung is tested rather than come nearer to [C]. */
  private static final double READY = 0.8;

  /** About as much as one miss takes from a test, in clean reps, by the usual rule. */
  private static final double MISS_TAKES = 4;

  /** Where a test gains hardly anything a rep, no count of reps is worth telling. */
  private static final double GAIN_MIN = 0.05;

  private static final double REPS_FAR = 1_000;

  /** For a miss that does not decide. */
  private static final int SPARE = 1;

  /** Of what is decided as soon, what moves least of what stands; then by rung. */
  private static Comparator<Work> soonest(@Nullable Drill stands) {
    return Comparator.comparingDouble(Work::repsToDecide)
        .thenComparingInt(work -> OneChange.onGround(work.drills.getFirst(), stands))
        .thenComparing(work -> work.standing.pool().rung());
  }

  /** All that has its turn: what is decided soonest first. */
  static List<Work> of(DogStanding dog, Ground ground, CleanForecast forecast) {
    List<Work> all = new ArrayList<>();
    for (StageStanding stage : dog.stages()) {
      if (stage.state() == StageState.OPEN && !stage.isProbe()) {
        List<Work> ofStage =
            stage.pools().stream()
                .filter(pool -> hasTurn(stage, pool))
                .map(pool -> of(pool, ground.allowed(pool), forecast))
                .filter(work -> !work.drills.isEmpty())
                .filter(
                    work -> work.isReady() || !work.drills.stream().allMatch(Ground::isPressure))
                .toList();
        ofStage.stream()
            .filter(work -> !work.waitsForStraightOn(ofStage) && !work.waitsForNearer(ofStage))
            .forEach(all::add);
      }
    }
    all.sort(soonest(ground.available().stands()));
    return all;
  }

  static Work of(PoolStanding standing, List<Drill> allowed, CleanForecast forecast) {
    List<Drill> drills = new ArrayList<>(allowed);
    if (lacksHandlingsAlone(standing.judgement())) {
      drills.removeIf(drill -> !isMissing(standing, drill));
    }
    drills.sort(
        Comparator.comparing((Drill drill) -> !isMissing(standing, drill))
            .thenComparingInt(drill -> repsOf(standing, drill)));
    return drills.isEmpty()
        ? new Work(standing, List.of(), 0, false)
        : new Work(
            standing,
            List.copyOf(drills),
            forecast.share(drills),
            forecast.isWithinReach(drills.getFirst()));
  }

  /** Reps of other handlings would decide nothing. */
  private static boolean lacksHandlingsAlone(RungJudgement judgement) {
    int missing = judgement.missing().size();
    return missing > 0 && judgement.cleanRepsToDecide() <= missing;
  }

  /** Nobody turns the poles before straight on can be expected to hold. */
  private boolean waitsForStraightOn(List<Work> ofStage) {
    return standing.pool().rung().size() > 0
        && ofStage.stream()
            .filter(other -> other.standing.pool().rung().size() == 0)
            .filter(other -> Objects.equals(other.standing.pool().step(), standing.pool().step()))
            .anyMatch(other -> !other.isReady());
  }

  /** What is far and looks easy is asked for once what is nearer was run: that teaches as much. */
  private boolean waitsForNearer(List<Work> ofStage) {
    return !withinReach
        && expected >= READY
        && ofStage.stream()
            .filter(other -> other.side() == side() || other.side() == EntrySide.BOTH)
            .filter(other -> Objects.equals(other.standing.pool().step(), standing.pool().step()))
            .anyMatch(other -> other.standing.pool().rung().size() < standing.pool().rung().size());
  }

  private static boolean hasTurn(StageStanding stage, PoolStanding pool) {
    return stage.isTurnOf(pool)
        && (stage.stage().terms().order() == StageOrder.MEASURED
            || stage.pools().stream()
                .filter(other -> other.pool().rung().size() < pool.pool().rung().size())
                .allMatch(PoolStanding::isBehind));
  }

  private static boolean isMissing(PoolStanding standing, Drill drill) {
    return standing.judgement().missing().contains(drill.handling());
  }

  /** Those that were clean at least once. */
  Stream<Drill> drillsOnceClean() {
    return drills.stream().filter(drill -> !isMissing(standing, drill));
  }

  private static int repsOf(PoolStanding standing, Drill drill) {
    return standing.drills().stream()
        .filter(each -> each.drill().drill().equals(drill))
        .mapToInt(DrillStanding::reps)
        .sum();
  }

  /** So many decide, if all but one of them are clean. */
  int repsToBeSure() {
    return standing.judgement().cleanRepsToDecide() + SPARE;
  }

  boolean isReady() {
    return expected >= READY && withinReach && !stepsBack();
  }

  /** Whether it went wrong so often running that something easier comes first. */
  boolean stepsBack() {
    return standing.judgement().verdict() instanceof Verdict.StepBack;
  }

  boolean isSharp() {
    return Limits.isSharp(drills.getFirst());
  }

  EntrySide side() {
    return standing.pool().rung().side();
  }

  DrillOfStage of(Drill drill) {
    return new DrillOfStage(standing.stage().id(), drill);
  }

  /** About how many reps it takes until the verdict, if the dog stays as it is. */
  double repsToDecide() {
    double gain = expected - MISS_TAKES * (1 - expected);
    return gain < GAIN_MIN
        ? REPS_FAR * (2 - expected)
        : standing.judgement().cleanRepsToDecide() / gain;
  }
}
