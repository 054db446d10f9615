package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.layout.EntrySide;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Six and twelve poles are tried before their turn, and trying them costs little. */
class LookAheadTest {

  private static final Limits SIXTEEN_REPS = Limits.ofReps(16);

  private static Learned fourPolesRoundTheClock() {
    return new Learned("three-bare", "four-bare");
  }

  private static List<PlanBlock> probes(Learned dog) {
    return probes(dog.plan(Available.EVERYTHING, SIXTEEN_REPS));
  }

  private static List<PlanBlock> probes(SessionPlan plan) {
    return plan.blocks().stream()
        .filter(block -> block.purpose() == PlanBlock.Purpose.PROBE)
        .toList();
  }

  @Test
  void sixPolesAreTriedOnceFourAreSolidThoughOtherStagesWait() {
    SessionPlan plan = fourPolesRoundTheClock().plan(Available.EVERYTHING, SIXTEEN_REPS);

    assertThat(probes(plan))
        .singleElement()
        .satisfies(
            probe -> {
              assertThat(probe.drill().stage()).isEqualTo("six-probe");
              assertThat(probe.reps()).as("two of three are to be clean").isEqualTo(3);
              assertThat(probe.fallback()).isNotNull();
            });
    assertThat(plan.blocks())
        .extracting(PlanBlock::purpose)
        .contains(PlanBlock.Purpose.WORK)
        .endsWith(PlanBlock.Purpose.PROBE, PlanBlock.Purpose.FINISH);
  }

  @Test
  void theyAreNotTriedBefore() {
    assertThat(probes(new Learned("three-bare"))).isEmpty();
  }

  @Test
  void oneThatFailedWaitsForTwoWeeks() {
    Learned dog = fourPolesRoundTheClock().missed("six-probe", 2);

    assertThat(probes(dog.daysPass(13))).isEmpty();
    assertThat(probes(dog.daysPass(1))).isNotEmpty();
  }

  @Test
  void noneIsTriedOnTheFirstDayAfterALongBreak() {
    Learned dog = fourPolesRoundTheClock();

    assertThat(probes(dog.daysPass(27))).isNotEmpty();
    assertThat(probes(dog.daysPass(1))).isEmpty();
  }

  @Test
  void theyAreNotTriedWhileTheyCannotBeExpectedToHold() {
    Learned dog = fourPolesRoundTheClock().missed("six-probe", 12).daysPass(15);

    assertThat(probes(dog)).isEmpty();
  }

  @Test
  void twelveAreTriedOnceSixHeld() {
    Learned dog = new Learned("three-bare", "four-bare", "six-probe");

    assertThat(probes(dog)).extracting(block -> block.drill().stage()).containsOnly("twelve-probe");
  }

  @Test
  void aSmallSessionIsNotAllProbe() {
    SessionPlan plan = fourPolesRoundTheClock().plan(Available.EVERYTHING, Limits.ofReps(4));

    assertThat(probes(plan)).singleElement().extracting(PlanBlock::reps).isEqualTo(2);
  }

  @Test
  void whereGapsAreScarceTheWorkGoesBefore() {
    Learned dog = new Learned("three-bare", "four-bare", "six-probe");

    assertThat(probes(dog.plan(Available.EVERYTHING, gaps(43)))).isEmpty();
    assertThat(probes(dog.plan(Available.EVERYTHING, gaps(44)))).isNotEmpty();
  }

  private static Limits gaps(int gaps) {
    return new Limits(16, gaps, 16, 24, Set.of(EntrySide.values()), false);
  }

  @Test
  void aSessionNeitherBeginsNorEndsWithOne() {
    SessionPlan plan =
        new Learned("three-bare", "four-bare", "four-jump", "tunnel-straight", "tunnel-turned")
            .plan(Available.EVERYTHING, SIXTEEN_REPS);

    assertThat(plan.blocks())
        .extracting(PlanBlock::purpose)
        .startsWith(PlanBlock.Purpose.WARM_UP)
        .endsWith(PlanBlock.Purpose.PROBE, PlanBlock.Purpose.FINISH);
  }

  @Test
  void theyNeedTheirPolesAndTheirGaps() {
    Learned dog = fourPolesRoundTheClock();
    Limits fourPoles = new Limits(16, 200, 16, 4, Set.of(EntrySide.values()), false);

    assertThat(probes(dog.plan(new Available(true, true, 5, null), SIXTEEN_REPS))).isEmpty();
    assertThat(probes(dog.plan(Available.EVERYTHING, fourPoles))).isEmpty();
  }
}
