package dev.poleward.domain.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What is to be worked on next: what slips before what is due, and both before anything new; in
 * place of what went wrong too often something easier; probes last.
 */
public final class NextRungs {

  /** So many slipping and so many due rungs are told; the rest come when these are mended. */
  public static final int REFRESHERS_EACH_MAX = 4;

  private final DogStanding dog;
  private final ExpectedClean expected;
  private final List<NextRung> next = new ArrayList<>();

  private NextRungs(DogStanding dog, ExpectedClean expected) {
    this.dog = dog;
    this.expected = expected;
  }

  /** For a dog that stands there and can be expected to do as well as that. */
  public static List<NextRung> of(DogStanding dog, ExpectedClean expected) {
    NextRungs rungs = new NextRungs(dog, expected);
    rungs.addRefreshers(_ -> true);
    for (StageStanding stage : dog.stages()) {
      if (stage.state() == StageState.OPEN && !stage.isProbe()) {
        rungs.addFrontier(stage);
      }
    }
    for (StageStanding stage : dog.stages()) {
      if (stage.state() == StageState.OPEN && stage.isProbe()) {
        stage.pools().stream()
            .filter(pool -> !pool.isBehind())
            .forEach(pool -> rungs.add(pool, NextRung.Reason.PROBE));
      }
    }
    return List.copyOf(rungs.next);
  }

  /** What slips and what is due, of all that can be run today. */
  public static List<NextRung> refreshers(
      DogStanding dog, ExpectedClean expected, Predicate<PoolStanding> today) {
    NextRungs rungs = new NextRungs(dog, expected);
    rungs.addRefreshers(today);
    return List.copyOf(rungs.next);
  }

  private void addRefreshers(Predicate<PoolStanding> today) {
    addRefreshers(DrillState.SLIPPING, NextRung.Reason.SLIPPING, today);
    addRefreshers(DrillState.DUE, NextRung.Reason.DUE, today);
  }

  private void add(PoolStanding pool, NextRung.Reason why) {
    next.add(new NextRung(pool, why, expected.share(pool.pool().drills())));
  }

  /** The hardest first: whoever practises those practises the easier ones with them. */
  private void addRefreshers(DrillState state, NextRung.Reason why, Predicate<PoolStanding> today) {
    List<PoolStanding> all =
        dog.pools().stream().filter(pool -> pool.state() == state && today.test(pool)).toList();
    all.stream()
        .filter(pool -> all.stream().noneMatch(other -> covers(other, pool)))
        .limit(REFRESHERS_EACH_MAX)
        .forEach(pool -> add(pool, why));
  }

  private static boolean covers(PoolStanding one, PoolStanding other) {
    return PoolKeeping.keeps(one.stage(), one.pool(), other.stage(), other.pool())
        && !PoolKeeping.keeps(other.stage(), other.pool(), one.stage(), one.pool());
  }

  private void addFrontier(StageStanding stage) {
    List<PoolStanding> open = stage.pools().stream().filter(stage::isTurnOf).toList();
    List<Double> sizes =
        open.stream()
            .map(pool -> pool.pool().rung().size())
            .distinct()
            .sorted(order(stage, open))
            .toList();
    for (PoolStanding pool : open) {
      if (!sizes.isEmpty() && pool.pool().rung().size() == sizes.getFirst()) {
        addOrEasier(stage, pool);
      }
    }
  }

  /** Both sides of a size come before the next, whichever the order. */
  private Comparator<Double> order(StageStanding stage, List<PoolStanding> open) {
    return switch (stage.stage().terms().order()) {
      case LISTED -> Comparator.<Double>naturalOrder();
      case MEASURED ->
          Comparator.<Double>comparingDouble(size -> -expectedOf(size, open))
              .thenComparing(Comparator.naturalOrder());
    };
  }

  private double expectedOf(double size, List<PoolStanding> open) {
    return expected.share(
        open.stream()
            .filter(pool -> pool.pool().rung().size() == size)
            .flatMap(pool -> pool.pool().drills().stream())
            .toList());
  }

  private void addOrEasier(StageStanding stage, PoolStanding pool) {
    Optional<PoolStanding> easier =
        pool.judgement().verdict() instanceof Verdict.StepBack
            ? easierThan(stage, pool)
            : Optional.empty();
    easier.ifPresent(each -> add(each, NextRung.Reason.EASIER));
    add(pool, NextRung.Reason.FRONTIER);
  }

  /**
   * The nearest smaller angle of the stage on the same side that is behind the dog, or straight.
   */
  private static Optional<PoolStanding> easierThan(StageStanding stage, PoolStanding pool) {
    return stage.pools().stream()
        .filter(PoolStanding::isBehind)
        .filter(other -> Objects.equals(other.pool().step(), pool.pool().step()))
        .filter(other -> other.pool().rung().size() < pool.pool().rung().size())
        .filter(
            other ->
                other.pool().rung().size() == 0
                    || other.pool().rung().side() == pool.pool().rung().side())
        .max(Comparator.comparingDouble(other -> other.pool().rung().size()));
  }
}
