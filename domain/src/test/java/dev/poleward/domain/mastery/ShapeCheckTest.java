package dev.poleward.domain.mastery;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** That the flag stays down where the curve is right, and goes up where it is wrong. */
class ShapeCheckTest {

  private static final int DOGS = 2_000;
  private static final double[] HALF_HOURS = {0, 15, 30, 45, 60, 75, 90};
  private static final double[] TURNED = IntStream.range(0, 19).mapToDouble(i -> 5 * i).toArray();

  /** The share of false alarms is to be 5% at most. */
  @Test
  void ofDogsWhoseChanceFallsAsTheCurveSaysFewRaiseTheFlag() {
    for (double slope : new double[] {0, -.01, -.02, -.06, -.15}) {
      RandomTrials.Curve logistic = place -> Logit.inverse(slope * (place - 50) + Logit.of(0.8));

      assertThat(flagged(HALF_HOURS, 10, logistic)).isLessThan(0.05);
      assertThat(flagged(HALF_HOURS, 80, logistic)).isLessThan(0.05);
      assertThat(flagged(TURNED, 5, logistic)).isLessThan(0.05);
      assertThat(flagged(TURNED, 30, logistic)).isLessThan(0.05);
    }
  }

  /** Solid up to 45°, and then as often missed as made however sharp: no such curve is logistic. */
  @Test
  void ofDogsWithACliffAndAPlateauMostRaiseTheFlag() {
    RandomTrials.Curve cliff = place -> place <= 45 ? 0.98 : 0.5;

    assertThat(flagged(HALF_HOURS, 40, cliff)).isGreaterThan(0.8);
    assertThat(flagged(TURNED, 20, cliff)).isGreaterThan(0.8);
  }

  @Test
  void ofFewRepsFewAreEnoughToTell() {
    RandomTrials.Curve cliff = place -> place <= 45 ? 0.98 : 0.5;

    assertThat(flagged(HALF_HOURS, 3, cliff)).isLessThan(0.10);
  }

  @Test
  void whereTheIsotonicFitIsTheCurveTheyAgree() {
    Trials trials = new Trials(new double[] {0, 30}, new double[] {18, 10}, new double[] {2, 10});

    assertThat(ShapeCheck.disagree(trials, FirthLogistic.fit(trials), isotonic(trials))).isFalse();
  }

  private static double flagged(double[] places, int tries, RandomTrials.Curve chance) {
    Random random = new Random(19);
    int flagged = 0;
    for (int dog = 0; dog < DOGS; dog++) {
      Trials trials = RandomTrials.ofDog(random, places, tries, chance);
      LogisticFit fit = FirthLogistic.fit(trials);
      if (ShapeCheck.disagree(trials, fit, isotonic(trials))) {
        flagged++;
      }
    }
    return flagged / (double) DOGS;
  }

  private static double[] isotonic(Trials trials) {
    double[] shares = new double[trials.size()];
    double[] weights = new double[trials.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = trials.made(i) / trials.weight(i);
      weights[i] = trials.weight(i);
    }
    return IsotonicFit.decreasing(shares, weights);
  }
}
