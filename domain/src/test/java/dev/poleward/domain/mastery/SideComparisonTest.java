package dev.poleward.domain.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.SideComparison.Alike;
import dev.poleward.domain.mastery.SideComparison.Apart;
import dev.poleward.domain.mastery.SideComparison.CannotTell;
import dev.poleward.domain.mastery.SideComparison.Lags;
import dev.poleward.domain.mastery.SideComparison.Why;
import dev.poleward.domain.mastery.Threshold.BelowTried;
import dev.poleward.domain.mastery.Threshold.BeyondTried;
import dev.poleward.domain.mastery.Threshold.Estimated;
import dev.poleward.domain.mastery.Threshold.NoFall;
import dev.poleward.domain.mastery.Threshold.NotEnoughReps;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SideComparisonTest {

  private static final int DOGS = 400;

  private static Threshold at(double degrees, @Nullable Double lower, @Nullable Double upper) {
    return new Estimated(degrees, lower, upper, LimitMethod.PROFILE);
  }

  private static Threshold beyond(double tried, @Nullable Double lower) {
    return new BeyondTried(tried, lower, LimitMethod.PROFILE);
  }

  /** By hand: 60 - 40 = 20; 20 - √(6² + 8²) = 10; 20 + √(12² + 5²) = 33 [D]. */
  @Test
  void theDifferenceHasLimitsFromThoseOfBoth() {
    assertThat(SideComparison.of(at(60, 54.0, 72.0), at(40, 35.0, 48.0)))
        .isInstanceOfSatisfying(
            Lags.class,
            it -> {
              assertThat(it.side()).isEqualTo(EntrySide.GAP);
              Apart behind = Objects.requireNonNull(it.behind());
              assertThat(behind.degrees()).isCloseTo(20, within(1e-12));
              assertThat(Objects.requireNonNull(behind.lower())).isCloseTo(10, within(1e-12));
              assertThat(Objects.requireNonNull(behind.upper())).isCloseTo(33, within(1e-12));
            });
  }

  /** Neither side is the harder one: whoever swaps them gets the same, swapped. */
  @Test
  void sidesCanBeSwapped() {
    Random random = new Random(7);
    for (int i = 0; i < 1_000; i++) {
      Threshold one = any(random);
      Threshold other = any(random);
      assertThat(swapped(SideComparison.of(one, other))).isEqualTo(SideComparison.of(other, one));
    }
  }

  private static Threshold any(Random random) {
    double degrees = 10 + random.nextInt(100);
    Double lower = random.nextInt(4) == 0 ? null : degrees - 1 - random.nextInt(20);
    Double upper = random.nextInt(4) == 0 ? null : degrees + 1 + random.nextInt(20);
    return switch (random.nextInt(5)) {
      case 0 -> beyond(degrees, lower);
      case 1 -> new BelowTried(degrees, upper, LimitMethod.PROFILE);
      default -> at(degrees, lower, upper);
    };
  }

  private static SideComparison swapped(SideComparison comparison) {
    return switch (comparison) {
      case Lags(EntrySide side, Apart behind) ->
          new Lags(side == EntrySide.POLE ? EntrySide.GAP : EntrySide.POLE, behind);
      case Alike(Apart difference) -> new Alike(difference.reversed());
      case CannotTell(Why why, Apart difference) ->
          new CannotTell(why, difference == null ? null : difference.reversed());
    };
  }

  @Test
  void thresholdsNearEachOtherAreAlikeAndWideOnesTellNothing() {
    assertThat(SideComparison.of(at(60, 55.0, 65.0), at(58, 53.0, 63.0))).isInstanceOf(Alike.class);
    assertThat(SideComparison.of(at(60, 30.0, 90.0), at(58, 53.0, 63.0)))
        .isInstanceOfSatisfying(
            CannotTell.class, it -> assertThat(it.why()).isEqualTo(Why.LIMITS_TOO_WIDE));
  }

  /** The upper limit of the one side that has none would have been asked for nothing [D]. */
  @Test
  void aLimitThatDoesNotMatterMayBeMissing() {
    assertThat(SideComparison.of(at(60, 54.0, null), at(40, null, 48.0)))
        .isEqualTo(new Lags(EntrySide.GAP, new Apart(20, 10.0, null)));
    assertThat(SideComparison.of(at(60, null, 72.0), at(40, 35.0, 48.0)))
        .isEqualTo(new CannotTell(Why.LIMITS_TOO_WIDE, new Apart(20, null, 33.0)));
  }

  @Test
  void whatWasNotTriedDecidesOnlyWhereLimitsDo() {
    assertThat(SideComparison.of(at(40, 35.0, 45.0), beyond(90, 70.0)))
        .isEqualTo(new Lags(EntrySide.POLE, null));
    assertThat(SideComparison.of(at(40, 35.0, 75.0), beyond(90, 70.0)))
        .isEqualTo(new CannotTell(Why.OUTSIDE_TRIED, null));
    assertThat(SideComparison.of(at(40, 35.0, 45.0), beyond(90, null)))
        .isEqualTo(new CannotTell(Why.OUTSIDE_TRIED, null));
    assertThat(SideComparison.of(beyond(90, 70.0), beyond(90, 70.0)))
        .isEqualTo(new CannotTell(Why.OUTSIDE_TRIED, null));
    assertThat(SideComparison.of(at(70, 60.0, 80.0), new BelowTried(30, 45.0, LimitMethod.PROFILE)))
        .isEqualTo(new Lags(EntrySide.GAP, null));
    assertThat(SideComparison.of(new NotEnoughReps(), at(40, 35.0, 45.0)))
        .isEqualTo(new CannotTell(Why.NOT_ENOUGH_REPS, null));
    assertThat(SideComparison.of(at(40, 35.0, 45.0), new NoFall()))
        .isEqualTo(new CannotTell(Why.NO_FALL, null));
  }

  /**
   * Of dogs that are as good on either side about one in twenty is said to lag, at most; of dogs
   * that are 40 degrees worse on one side most are found, and on that side [D].
   */
  @Test
  void dogsThatAreAlikeAreSeldomSaidToLag() {
    Random random = new Random(20_260_504);
    long alike = IntStream.range(0, DOGS).filter(_ -> lags(random, 70, 70) != null).count();
    long found =
        IntStream.range(0, DOGS).filter(_ -> lags(random, 50, 90) == EntrySide.POLE).count();
    long wrong =
        IntStream.range(0, DOGS).filter(_ -> lags(random, 50, 90) == EntrySide.GAP).count();

    // Three standard deviations of 5% of 400 dogs: 13 more than 20.
    assertThat(alike).isLessThanOrEqualTo(33);
    assertThat(found).isGreaterThan(DOGS / 2);
    assertThat(wrong).isLessThanOrEqualTo(2);
  }

  /** A dog that makes four of five at that size, and from 12 degrees farther half of them. */
  private static @Nullable EntrySide lags(Random random, double pole, double gap) {
    return SideComparison.of(threshold(random, pole), threshold(random, gap))
            instanceof Lags(EntrySide side, Apart _)
        ? side
        : null;
  }

  private static Threshold threshold(Random random, double atFourOfFive) {
    double[] places = {0, 30, 60, 90, 120};
    double slope = Math.log(4) / 24;
    Trials trials =
        RandomTrials.ofDog(
            random,
            places,
            24,
            place -> 1 / (1 + Math.exp(-(Math.log(4) - slope * (place - atFourOfFive)))));
    return Threshold.of(trials, FirthLogistic.fit(trials), 0.8, LimitMethod.PROFILE);
  }
}
