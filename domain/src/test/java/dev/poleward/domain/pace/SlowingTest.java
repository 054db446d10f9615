package dev.poleward.domain.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.pace.Slowing.Verdict;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Whether a dog is slower lately than before. */
class SlowingTest {

  private static final Instant UNTIL = Instant.parse("2026-07-01T00:00:00Z");

  private static Slowing slowing(List<TimedRep> reps) {
    return slowing(reps, null);
  }

  private static Slowing slowing(List<TimedRep> reps, @Nullable Instant cleared) {
    return Slowing.of(reps, cleared, UNTIL, ZoneOffset.UTC);
  }

  /** Five runs on every third day, of so many seconds on that day before the end. */
  private static List<TimedRep> everyThirdDay(TimedRuns runs, IntToDoubleFunction seconds) {
    return every(3, 69, runs, seconds);
  }

  private static List<TimedRep> every(
      int step, int first, TimedRuns runs, IntToDoubleFunction seconds) {
    List<TimedRep> reps = new ArrayList<>();
    for (int day = first; day > 0; day -= step) {
      for (int i = 0; i < 5; i++) {
        Instant at = UNTIL.minus(Duration.ofDays(day)).plus(Duration.ofHours(17 + i));
        reps.add(runs.clean(at, seconds.applyAsDouble(day) * (1 + (i - 2) / 100.0)));
      }
    }
    return reps;
  }

  private static double slower(int day) {
    return (day <= 14 ? 1.65 : 1.5) + day % 4 / 100.0;
  }

  @Test
  void aDogThatIsATenthSlowerLatelyIsFound() {
    Slowing slowing = slowing(everyThirdDay(TimedRuns.OF_FOUR, SlowingTest::slower));

    assertThat(slowing.verdict()).isEqualTo(Verdict.SLOWER);
    assertThat(slowing.days()).isEqualTo(4);
    assertThat(slowing.daysBefore()).isEqualTo(19);
    assertThat(slowing.change()).isCloseTo(0.1, within(0.02));
    // All four rank above all others: one order of 8,855 [D].
    assertThat(slowing.chance()).isCloseTo(1 / 8_855.0, within(1e-12));
  }

  @Test
  void surelySlowerByLittleIsNotSlower() {
    Slowing slowing =
        slowing(everyThirdDay(TimedRuns.OF_FOUR, day -> (day <= 14 ? 1.55 : 1.5) + day % 4 / 1e4));

    assertThat(slowing.verdict()).isEqualTo(Verdict.NOT_SLOWER);
    assertThat(slowing.chance()).isLessThan(0.01);
    assertThat(slowing.change()).isLessThan(Slowing.CHANGE_MIN);
  }

  @Test
  void aDogThatLearnsIsNotSlower() {
    Slowing slowing = slowing(everyThirdDay(TimedRuns.OF_FOUR, day -> 1.5 + day / 200.0));

    assertThat(slowing.verdict()).isEqualTo(Verdict.NOT_SLOWER);
    assertThat(slowing.change()).isNegative();
  }

  @Test
  void whatWasNotRunBeforeIsNotComparedWithWhatWas() {
    List<TimedRep> reps = everyThirdDay(TimedRuns.OF_FOUR, day -> 1.5);
    List<TimedRep> longer =
        everyThirdDay(new TimedRuns(6, 30, Manoeuvre.SEND), day -> 2.9).stream()
            .filter(rep -> !rep.rep().moment().time().isBefore(UNTIL.minus(Duration.ofDays(14))))
            .toList();
    reps.addAll(longer);

    assertThat(slowing(reps).change()).isCloseTo(0, within(1e-9));
    assertThat(slowing(longer).verdict()).isEqualTo(Verdict.NOT_ENOUGH_DAYS);
  }

  @Test
  void fewDaysAreNotEnough() {
    List<TimedRep> slower = everyThirdDay(TimedRuns.OF_FOUR, SlowingTest::slower);

    assertThat(slowing(List.of()).verdict()).isEqualTo(Verdict.NOT_ENOUGH_DAYS);
    assertThat(slowing(slower.subList(slower.size() - 50, slower.size())).verdict())
        .isEqualTo(Verdict.NOT_ENOUGH_DAYS);
  }

  /** Three weeks of once a week against eight: one order of 165 [D]. */
  @Test
  void ofADogThatTrainsOnceAWeekThreeWeeksAreLately() {
    Slowing slowing =
        slowing(every(7, 77, TimedRuns.OF_FOUR, day -> (day <= 21 ? 1.8 : 1.5) + day / 1_000.0));

    assertThat(slowing.days()).isEqualTo(3);
    assertThat(slowing.daysBefore()).isEqualTo(8);
    assertThat(slowing.chance()).isCloseTo(1 / 165.0, within(1e-12));
    assertThat(slowing.verdict()).isEqualTo(Verdict.SLOWER);
  }

  @Test
  void whatWasBeforeSomebodyLookedAtTheDogIsNotLately() {
    List<TimedRep> slower = everyThirdDay(TimedRuns.OF_FOUR, SlowingTest::slower);
    Slowing cleared = slowing(slower, UNTIL.minus(Duration.ofDays(5)));

    assertThat(cleared.verdict()).isEqualTo(Verdict.NOT_ENOUGH_DAYS);
    assertThat(cleared.days()).isEqualTo(1);
    assertThat(slowing(slower, UNTIL.minus(Duration.ofDays(40))).verdict())
        .isEqualTo(Verdict.SLOWER);
  }

  /**
   * Simulated, seed 4: dogs that do not change, whose days differ by a tenth, are called slower in
   * at most one of a hundred looks; dogs that slow by a fifth are in about two of three.
   */
  @Test
  void itErrsAsSeldomAsItSaysThoughDaysDiffer() {
    assertThat(shareSlower(0, 6_000)).isLessThanOrEqualTo(0.0125);
    assertThat(shareSlower(0.2, 1_000)).isBetween(0.6, 0.72);
  }

  private static double shareSlower(double by, int dogs) {
    SplittableRandom random = new SplittableRandom(4);
    int slower = 0;
    for (int dog = 0; dog < dogs; dog++) {
      List<TimedRep> reps =
          everyThirdDay(
              TimedRuns.OF_FOUR,
              new IntToDoubleFunction() {
                private int last;
                private double mood;

                @Override
                public double applyAsDouble(int day) {
                  mood = day == last ? mood : Math.exp(random.nextGaussian() / 10);
                  last = day;
                  return 1.5
                      * mood
                      * Math.exp(random.nextGaussian() / 20)
                      * (day <= 14 ? 1 + by : 1);
                }
              });
      slower += slowing(reps).verdict() == Verdict.SLOWER ? 1 : 0;
    }
    return (double) slower / dogs;
  }
}
