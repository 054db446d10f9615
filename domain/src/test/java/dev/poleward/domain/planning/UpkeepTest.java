package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** A dog with nothing to learn has a session all the same. */
class UpkeepTest {

  private static final Learned THROUGH =
      new Learned(
              "three-bare",
              "four-bare",
              "four-jump",
              "tunnel-straight",
              "tunnel-turned",
              "six-probe",
              "twelve-probe")
          .daysPass(2);

  @Test
  void whatIsSolidIsKeptSoTheLongestLeftAloneFirst() {
    SessionPlan plan = THROUGH.plan(Available.EVERYTHING, Limits.ofReps(12));

    assertThat(plan.reps()).isBetween(8, 12);
    assertThat(plan.blocks())
        .extracting(PlanBlock::purpose)
        .contains(PlanBlock.Purpose.KEEP)
        .isSubsetOf(PlanBlock.Purpose.WARM_UP, PlanBlock.Purpose.KEEP, PlanBlock.Purpose.FINISH);
    assertThat(plan.expectedClean()).isGreaterThanOrEqualTo(0.8);
  }

  @Test
  void itKeepsToTheLimitsOfTheDay() {
    Limits straightOn = new Limits(6, 12, 0, 4, Set.of(), false);
    SessionPlan plan = THROUGH.plan(new Available(false, false, 4, null), straightOn);

    assertThat(plan.blocks()).isNotEmpty();
    assertThat(plan.blocks())
        .allSatisfy(
            block -> {
              assertThat(block.drill().drill().rung().size()).isZero();
              assertThat(block.drill().drill().poles()).isLessThanOrEqualTo(4);
            });
    assertThat(
            plan.blocks().stream()
                .mapToInt(block -> block.reps() * (block.drill().drill().poles() - 1))
                .sum())
        .isLessThanOrEqualTo(12);
  }
}
