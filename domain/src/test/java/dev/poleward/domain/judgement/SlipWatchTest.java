package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.poleward.domain.programme.MovingOnRule;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlipWatchTest {

  /** Reps to the alarm that can be worked out by hand [D], [R]: one up, one down is t(t + 1). */
  @ParameterizedTest
  @CsvSource({
    ".5, 2, 4, 20",
    ".5, 2, 10, 110",
    ".2, 3, 4, 27.24137931",
    ".2, 3, 6, 90.801105",
    ".1, 4, 8, 312.34178",
  })
  void repsToTheAlarmAreThoseWorkedOutByHand(double missed, int worth, int threshold, double reps) {
    assertThat(new SlipWatch(worth, threshold).repsToAlarm(missed))
        .isCloseTo(reps, withinPercentage(2e-6));
  }

  /** Watches after Reynolds and Stoumbos 1999, with exact numbers of reps [R]. */
  @ParameterizedTest
  @CsvSource({
    ".10, 5, 25, .334513966, 19509.982, 34.64331",
    ".10, 6, 30, .251741979, 4724.4655, 52.01615",
    ".20, 3, 15, .487689437, 6399.4922, 29.37094",
    ".01, 59, 236, .0264884026, 9813.8716, 352.1817",
  })
  void repsToTheAlarmAreThoseOfReynoldsAndStoumbos(
      double solid, int worth, int threshold, double slipped, double toFalse, double toTrue) {
    SlipWatch watch = new SlipWatch(worth, threshold);

    assertThat(slippedTo(watch, solid)).isCloseTo(slipped, withinPercentage(1e-6));
    assertThat(watch.repsToAlarm(solid)).isCloseTo(toFalse, withinPercentage(2e-5));
    assertThat(watch.repsToAlarm(slipped)).isCloseTo(toTrue, withinPercentage(2e-5));
  }

  /** Simulated, seed 4: the chain is that of the watch itself. */
  @Test
  void theChainIsTheWatch() {
    SlipWatch watch = new SlipWatch(5, 12);
    SplittableRandom random = new SplittableRandom(4);
    int dogs = 4_000;
    long reps = 0;
    for (int dog = 0; dog < dogs; dog++) {
      CusumScore score = watch.begun();
      while (!score.sounds()) {
        score = watch.seen(score, random.nextDouble() >= 0.15);
      }
      reps += score.values();
    }

    assertThat((double) reps / dogs).isCloseTo(watch.repsToAlarm(0.15), withinPercentage(6));
  }

  @ParameterizedTest
  @CsvSource({
    ".1, .3, 500",
    ".1, .3, 50",
    ".05, .2, 1000",
    ".2, .4, 300",
    ".45, .5, 200",
    ".1, .11, 100",
  })
  void aDesignedWatchIsTheLowestThatErrsNoMoreOftenThanWasAsked(
      double solid, double slipped, double reps) {
    SlipWatch watch = SlipWatch.designed(solid, slipped, reps);

    assertThat(watch.repsToAlarm(solid)).isGreaterThanOrEqualTo(reps);
    assertThat(new SlipWatch(watch.missWorth(), watch.threshold() - 1).repsToAlarm(solid))
        .isLessThan(reps);
    assertThat(slippedTo(watch, solid)).isGreaterThan(solid);
    assertThat(watch.repsToAlarm(slipped)).isLessThan(watch.repsToAlarm(solid));
  }

  @Test
  void theUsualWatchIsForOneMissInTenThatBecomesTwo() {
    assertThat(SlipWatch.USUAL).isEqualTo(SlipWatch.designed(0.1, 0.2, 500));
    assertThat(SlipWatch.USUAL).isEqualTo(new SlipWatch(7, 26));
    assertThat(SlipWatch.after(MovingOnRule.USUAL)).isEqualTo(SlipWatch.USUAL);
    assertThat(SlipWatch.after(new MovingOnRule.Run(6, 3, 0.05))).isEqualTo(SlipWatch.USUAL);
  }

  /** Whatever a programme may ask for has a watch. */
  @Test
  void everyRuleHasAWatch() {
    for (double mastered = 0.02; mastered < 0.999; mastered += 0.07) {
      for (double notYet = 0.01; notYet < mastered; notYet += 0.09) {
        SlipWatch watch =
            SlipWatch.after(new MovingOnRule.Sequential(mastered, notYet, .1, .1, 3, .05));

        assertThat(watch.repsToAlarm(Math.min(0.45, 1 - mastered))).isGreaterThanOrEqualTo(499);
      }
    }
  }

  @Test
  void aDogThatNeverMissesIsNeverAlarmedAndOneThatAlwaysDoesIsSoon() {
    SlipWatch watch = new SlipWatch(5, 12);

    assertThat(watch.repsToAlarm(0)).isInfinite();
    assertThat(watch.repsToAlarm(1)).isEqualTo(3);
  }

  @Test
  void whatIsNoWatchIsRefused() {
    assertThatThrownBy(() -> new SlipWatch(1, 5)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SlipWatch(5, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SlipWatch.designed(0.3, 0.1, 500))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** A Markov chain solved anew, by elimination in another program [D]. */
  @ParameterizedTest
  @CsvSource({".05, 20260.7", ".1, 556.5", ".12, 253.1", ".15, 112.7", ".2, 50.9"})
  void theUsualWatchSoundsAsOftenAsItSaysOnlyForTheDogsItIsMadeFor(double missed, double reps) {
    for (MovingOnRule rule :
        List.of(new MovingOnRule.KOfN(8, 10, 3, 0.05), new MovingOnRule.Run(6, 3, 0.05))) {
      assertThat(SlipWatch.after(rule).repsToAlarm(missed)).isCloseTo(reps, within(0.051));
    }
  }

  /** The share of misses that a watch finds out soonest, for a dog of that share while solid. */
  private static double slippedTo(SlipWatch watch, double solid) {
    double below = solid;
    double above = 1;
    for (int i = 0; i < 100; i++) {
      double middle = (below + above) / 2;
      if (SlipWatch.restAt(solid, middle) < 1.0 / watch.missWorth()) {
        below = middle;
      } else {
        above = middle;
      }
    }
    return (below + above) / 2;
  }
}
