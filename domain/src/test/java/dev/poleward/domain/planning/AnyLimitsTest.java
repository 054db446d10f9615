package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillState;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.Drill;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What plans promise holds under whatever limits of the day. */
class AnyLimitsTest {

  private static final int DOGS = 6;
  private static final int SESSIONS = 30;

  private static final Map<Limits, List<Made>> ALL = new ConcurrentHashMap<>();

  private record Made(DogStanding dog, CleanForecast forecast, SessionPlan plan) {

    boolean hasLearned() {
      return dog.pools().stream()
          .map(PoolStanding::state)
          .anyMatch(EnumSet.of(DrillState.SOLID, DrillState.DUE)::contains);
    }

    /** The best that could be relied on within the limits. */
    double best(Limits limits) {
      Ground ground = Ground.of(Available.EVERYTHING, limits, dog);
      return dog.pools().stream()
          .filter(pool -> pool.isSolid() || pool.state() == DrillState.DUE)
          .flatMap(ground::drills)
          .filter(each -> each.drill().handling().manoeuvre() != Manoeuvre.PRESSURE)
          .mapToDouble(each -> forecast.share(each.drill()))
          .max()
          .orElse(0);
    }
  }

  static Stream<Named<Limits>> limits() {
    return Stream.of(
            limits(1, 1_000, 1_000),
            limits(2, 1_000, 1_000),
            limits(4, 1_000, 1_000),
            limits(10, 1_000, 1_000),
            limits(16, 1_000, 1_000),
            limits(30, 1_000, 1_000),
            limits(10, 24, 1_000),
            limits(16, 30, 1_000),
            limits(10, 12, 1_000),
            limits(16, 40, 2),
            limits(10, 1_000, 0))
        .map(
            each ->
                Named.of(
                    "%d reps, %d gaps, %d sharp bends"
                        .formatted(each.reps(), each.gaps(), each.sharpBends()),
                    each));
  }

  private static Limits limits(int reps, int gaps, int sharpBends) {
    return new Limits(reps, gaps, sharpBends, 24, Set.of(EntrySide.values()), false);
  }

  private static List<Made> made(Limits limits) {
    return ALL.computeIfAbsent(limits, AnyLimitsTest::make);
  }

  private static List<Made> make(Limits limits) {
    List<Made> all = new ArrayList<>();
    for (long seed = 1; seed <= DOGS; seed++) {
      SimulatedPupil pupil = new SimulatedPupil(seed);
      for (int session = 0; session < SESSIONS; session++) {
        SessionPlan plan = pupil.plan(limits);
        all.add(new Made(pupil.standing(), pupil.forecast(), plan));
        pupil.run(plan);
      }
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("limits")
  void noneIsExceededAndNoPlanIsEmpty(Limits limits) {
    assertThat(made(limits))
        .allSatisfy(
            made -> {
              int gaps = 0;
              int sharp = 0;
              for (PlanBlock block : made.plan().blocks()) {
                Drill drill = block.drill().drill();
                gaps += block.reps() * (drill.poles() - 1);
                sharp += Limits.isSharp(drill) ? block.reps() : 0;
              }
              assertThat(made.plan().reps()).isBetween(1, limits.reps());
              assertThat(gaps).isLessThanOrEqualTo(limits.gaps());
              assertThat(sharp).isLessThanOrEqualTo(limits.sharpBends());
            });
  }

  @ParameterizedTest
  @MethodSource("limits")
  void itBeginsAndEndsWithWhatGoesWellOrAsWellAsAnythingDoes(Limits limits) {
    assertThat(made(limits))
        .filteredOn(Made::hasLearned)
        .isNotEmpty()
        .allSatisfy(
            made -> {
              double well = Math.min(made.dog().programme().cleanTarget(), made.best(limits));
              List<PlanBlock> blocks = made.plan().blocks();
              assertThat(blocks.getFirst().expected().value()).isGreaterThanOrEqualTo(well - 1e-9);
              assertThat(blocks.getLast().expected().value()).isGreaterThanOrEqualTo(well - 1e-9);
              assertThat(blocks.getFirst().purpose()).isNotEqualTo(PlanBlock.Purpose.MEND);
            });
  }

  @ParameterizedTest
  @MethodSource("limits")
  void itIsNeverExpectedToFallBelowTheFloorWhereTheDogHasAnythingThatGood(Limits limits) {
    assertThat(made(limits))
        .filteredOn(made -> made.best(limits) >= made.dog().programme().cleanTarget())
        .isNotEmpty()
        .allSatisfy(
            made ->
                assertThat(made.plan().expectedClean())
                    .as(made.plan().toString())
                    .isGreaterThanOrEqualTo(made.dog().programme().cleanFloor() - 1e-9));
  }

  @ParameterizedTest
  @MethodSource("limits")
  void hardlyAnySessionHasTheDogOnOneSideAlone(Limits limits) {
    List<Made> all = made(limits).stream().filter(made -> made.plan().reps() >= 8).toList();
    long oneDogSide = all.stream().filter(made -> dogSides(made.plan()).size() == 1).count();
    long oneEntrySide = all.stream().filter(made -> entrySides(made.plan()).size() == 1).count();

    assertThat(oneDogSide).as("of " + all.size()).isLessThanOrEqualTo(all.size() / 50);
    assertThat(oneEntrySide).as("of " + all.size()).isLessThanOrEqualTo(all.size() / 10);
  }

  private static Set<DogSide> dogSides(SessionPlan plan) {
    Set<DogSide> sides = EnumSet.noneOf(DogSide.class);
    for (PlanBlock block : plan.blocks()) {
      DogSide side = block.drill().drill().handling().dogSide();
      if (side != null) {
        sides.add(side);
      }
    }
    return sides;
  }

  private static Set<EntrySide> entrySides(SessionPlan plan) {
    Set<EntrySide> sides = EnumSet.noneOf(EntrySide.class);
    plan.blocks().forEach(block -> sides.add(block.drill().drill().rung().side()));
    sides.remove(EntrySide.BOTH);
    return sides;
  }
}
