package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.Drill;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What every plan promises, over simulated dogs from their first rep on. */
class PlannerTest {

  private static final int DOGS = 12;
  private static final int SESSIONS = 30;
  private static final int REPS = 16;
  private static final Limits LIMITS = Limits.ofReps(REPS);

  /** A plan, and what it was made of. */
  private record Made(long seed, int session, DogStanding dog, SessionPlan plan) {

    boolean knowsSomethingSolid() {
      return dog.pools().stream().anyMatch(PoolStanding::isSolid);
    }

    @Override
    public String toString() {
      return "seed " + seed + ", session " + session;
    }
  }

  private static final List<Made> ALL = made(LIMITS);

  private static List<Made> made(Limits limits) {
    List<Made> all = new ArrayList<>();
    for (long seed = 1; seed <= DOGS; seed++) {
      SimulatedPupil pupil = new SimulatedPupil(seed);
      for (int session = 0; session < SESSIONS; session++) {
        SessionPlan plan = pupil.plan(limits);
        all.add(new Made(seed, session, pupil.standing(), plan));
        pupil.run(plan);
      }
    }
    return all;
  }

  @Test
  void itKeepsToItsBudget() {
    assertThat(ALL).allSatisfy(made -> assertThat(made.plan().reps()).isBetween(1, REPS));
  }

  @Test
  void betweenBlocksMostlyOneThingChanges() {
    int one = 0;
    int changes = 0;
    for (Made made : ALL) {
      List<PlanBlock> blocks = made.plan().blocks();
      for (int i = 1; i < blocks.size(); i++) {
        Drill before = blocks.get(i - 1).drill().drill();
        int changed = OneChange.between(before, blocks.get(i).drill().drill());
        one += changed <= 1 ? 1 : 0;
        changes++;
      }
    }
    assertThat((double) one / changes).as("of " + changes).isGreaterThan(0.93);
  }

  @Test
  void bothEntrySidesHaveTheirShare() {
    int pole = 0;
    int gap = 0;
    for (Made made : ALL) {
      for (PlanBlock block : made.plan().blocks()) {
        EntrySide side = block.drill().drill().rung().side();
        pole += side == EntrySide.POLE ? block.reps() : 0;
        gap += side == EntrySide.GAP ? block.reps() : 0;
      }
    }
    assertThat((double) pole / (pole + gap)).isBetween(0.42, 0.58);
  }

  @Test
  void pressureIsLeftOutUnlessAskedForAndWhatIsNotThereIsNotAskedFor() {
    assertThat(ALL)
        .flatExtracting(made -> made.plan().blocks())
        .extracting(block -> block.drill().drill().handling().manoeuvre())
        .doesNotContain(Manoeuvre.PRESSURE);

    SimulatedPupil pupil = new SimulatedPupil(1);
    for (int session = 0; session < 60; session++) {
      SessionPlan plan =
          Planner.plan(
              pupil.standing(), pupil.forecast(), new Available(true, false, 4, null), LIMITS);
      assertThat(plan.blocks())
          .allMatch(block -> block.drill().drill().runUp().leadIn() != LeadIn.TUNNEL)
          .allMatch(block -> block.drill().drill().poles() <= 4);
      pupil.run(plan);
    }
  }

  @Test
  void whereOneSideIsNotWantedItIsNotAskedFor() {
    Limits limits = new Limits(10, 24, 2, 4, EnumSet.of(EntrySide.POLE), false);

    assertThat(made(limits))
        .flatExtracting(made -> made.plan().blocks())
        .isNotEmpty()
        .noneMatch(block -> block.drill().drill().rung().side() == EntrySide.GAP);
  }

  @Test
  void withoutAngleWorkAllIsStraightOn() {
    Limits straight = new Limits(10, 100, 0, 4, Set.of(), false);

    assertThat(made(straight))
        .flatExtracting(made -> made.plan().blocks())
        .allMatch(block -> block.drill().drill().rung().size() == 0);
  }

  @Test
  void ofWhatIsAsGoodTheFirstMovesLeastOfWhatStands() {
    int nearer = 0;
    int farther = 0;
    for (long seed = 1; seed <= DOGS; seed++) {
      SimulatedPupil pupil = new SimulatedPupil(seed);
      for (int session = 0; session < SESSIONS; session++) {
        Drill usual = first(pupil, null);
        for (Drill stands : solid(pupil.standing())) {
          int moved = OneChange.onGround(first(pupil, stands), stands);
          int otherwise = OneChange.onGround(usual, stands);
          nearer += moved < otherwise ? 1 : 0;
          farther += moved > otherwise ? 1 : 0;
        }
        pupil.run(pupil.plan(LIMITS));
      }
    }
    assertThat(farther).isZero();
    assertThat(nearer).isPositive();
  }

  /** One of each rung. */
  private static List<Drill> solid(DogStanding dog) {
    return dog.pools().stream()
        .filter(PoolStanding::isSolid)
        .map(pool -> pool.pool().drills().getFirst())
        .toList();
  }

  private static Drill first(SimulatedPupil pupil, @Nullable Drill stands) {
    Available available = new Available(true, true, 24, stands);
    SessionPlan plan = Planner.plan(pupil.standing(), pupil.forecast(), available, LIMITS);
    return plan.blocks().getFirst().drill().drill();
  }

  @Test
  void theSameQuestionHasTheSameAnswer() {
    assertThat(made(LIMITS))
        .extracting(Made::plan)
        .isEqualTo(ALL.stream().map(Made::plan).toList());
  }

  @Test
  void aNewDogBeginsStraightOnOverThreePoles() {
    SessionPlan plan = new SimulatedPupil(1).plan(Limits.ofReps(8));

    assertThat(plan.blocks().getFirst().drill().stage()).isEqualTo("three-bare");
    assertThat(plan.blocks().getFirst().drill().drill().rung().size()).isZero();
    assertThat(plan.blocks()).allMatch(block -> block.drill().drill().rung().size() <= 30);
  }

  @Test
  void whatIsEasierIsThereForAfterTwoMisses() {
    assertThat(ALL)
        .filteredOn(Made::knowsSomethingSolid)
        .flatExtracting(made -> made.plan().blocks())
        .filteredOn(block -> block.drill().drill().rung().size() > 0)
        .isNotEmpty()
        .allMatch(block -> block.fallback() != null);
  }
}
