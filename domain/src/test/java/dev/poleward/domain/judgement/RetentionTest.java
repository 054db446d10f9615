package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RetentionTest {

  private static final Retention USUAL = Retention.USUAL;

  /** As good as no expectation at all. */
  private static final Retention NONE = new Retention(0, 0, 1e12, 0, 1e12);

  /** The usual expectation, as it is stated [D]. */
  @Test
  void withoutReturnsADogIsAsExpected() {
    Retention retention = Retention.fitted(List.of(), USUAL);

    assertThat(retention.shareAfter(0)).isCloseTo(0.9, within(1e-12));
    assertThat(retention.shareAfter(30)).isCloseTo(0.8, within(1e-12));
    assertThat(retention.dueAfterDays(0.8).orElseThrow()).isCloseTo(30, within(1e-9));
    Estimate atOnce = retention.after(0, Confidence.of(0.6827));
    assertThat(atOnce.lower()).isCloseTo(0.77, within(0.005));
    assertThat(atOnce.upper()).isCloseTo(0.96, within(0.005));
  }

  /**
   * Without an expectation it is a logistic regression over log(1 + days): Bliss's beetles, as in
   * Dobson, Table 7.2 to 7.4 [M], further digits and errors [R].
   */
  @Test
  void withoutAnExpectationItIsTheLogisticRegressionOfTheBeetles() {
    double[] doses = {1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.8610, 1.8839};
    int[] beetles = {59, 60, 62, 56, 63, 59, 62, 60};
    int[] killed = {6, 13, 18, 28, 52, 53, 61, 60};
    List<Return> returns = new ArrayList<>();
    for (int i = 0; i < doses.length; i++) {
      double days = Math.expm1(doses[i]);
      returns.addAll(Collections.nCopies(killed[i], new Return(days, true, 1)));
      returns.addAll(Collections.nCopies(beetles[i] - killed[i], new Return(days, false, 1)));
    }
    Retention retention = Retention.fitted(returns, NONE);

    assertThat(retention.logitAtOnce()).isCloseTo(-60.717455, within(1e-5));
    assertThat(retention.fall()).isCloseTo(-34.270326, within(1e-5));
    assertThat(Math.sqrt(retention.varianceAtOnce())).isCloseTo(5.180711, within(1e-5));
    assertThat(Math.sqrt(retention.varianceOfFall())).isCloseTo(2.912140, within(1e-5));
    // The fall is a slope with the other sign, and so is its covariance.
    assertThat(retention.covariance()).isCloseTo(15.082151, within(1e-4));
  }

  @Test
  void whoForgetsSoonerIsDueSooner() {
    List<Return> keeps = returns(2, true, 6, true, 20, true, 35, true, 60, true);
    List<Return> forgets = returns(2, true, 6, true, 20, false, 35, false, 60, false);

    double kept = Retention.fitted(keeps, USUAL).dueAfterDays(0.8).orElse(Retention.DAYS_MAX);
    double forgotten = Retention.fitted(forgets, USUAL).dueAfterDays(0.8).orElseThrow();
    assertThat(kept).isGreaterThan(60);
    assertThat(forgotten).isLessThan(20);
  }

  @Test
  void whatIsBelowTheLevelAtOnceIsDueNow() {
    List<Return> returns = new ArrayList<>(Collections.nCopies(30, new Return(1, false, 1)));

    assertThat(Retention.fitted(returns, USUAL).dueAfterDays(0.8)).hasValue(0);
  }

  @Test
  void whoShowsNoForgettingIsNeverDue() {
    List<Return> returns = new ArrayList<>(Collections.nCopies(40, new Return(200, true, 1)));
    returns.addAll(Collections.nCopies(4, new Return(0, false, 1)));
    returns.addAll(Collections.nCopies(40, new Return(0, true, 1)));
    Retention retention = Retention.fitted(returns, USUAL);

    assertThat(retention.dueAfterDays(0.8)).isEmpty();
    assertThat(retention.shareAfter(0)).isGreaterThan(0.8);
  }

  @Test
  void onTheDayThatItIsDueTheShareIsTheLevel() {
    SplittableRandom random = new SplittableRandom(2);
    for (int dog = 0; dog < 200; dog++) {
      Retention retention = Retention.fitted(random(random, random.nextInt(30)), USUAL);
      for (double level : new double[] {0.5, 0.7, 0.8, 0.9}) {
        retention
            .dueAfterDays(level)
            .ifPresent(
                days -> {
                  assertThat(days).isBetween(0.0, Retention.DAYS_MAX);
                  if (days > 0) {
                    assertThat(retention.shareAfter(days)).isCloseTo(level, within(1e-9));
                  }
                });
      }
    }
  }

  /** One more clean return never makes the dog look worse at that distance, nor a miss better. */
  @Test
  void aCleanReturnNeverLowersTheShareThere() {
    SplittableRandom random = new SplittableRandom(6);
    for (int dog = 0; dog < 300; dog++) {
      List<Return> returns = random(random, random.nextInt(20));
      double days = random.nextDouble(0, 90);
      double before = Retention.fitted(returns, USUAL).shareAfter(days);

      assertThat(Retention.fitted(with(returns, days, true), USUAL).shareAfter(days))
          .isGreaterThan(before);
      assertThat(Retention.fitted(with(returns, days, false), USUAL).shareAfter(days))
          .isLessThan(before);
    }
  }

  /** No place on a fine grid about the fit is likelier. */
  @Test
  void theFitIsTheLikeliest() {
    SplittableRandom random = new SplittableRandom(9);
    for (int dog = 0; dog < 20; dog++) {
      Hill hill = new RetentionHill(random(random, 25), USUAL);
      Hill.Place top = Climb.from(hill, USUAL.logitAtOnce(), USUAL.fall(), 250);
      for (double x = -1; x <= 1; x += 0.1) {
        for (double y = -1; y <= 1; y += 0.1) {
          assertThat(hill.at(top.x() + x, top.y() + y).height())
              .isLessThanOrEqualTo(top.height() + 1e-12);
        }
      }
    }
  }

  @Test
  void halfAReturnTwiceIsAReturn() {
    Retention whole = Retention.fitted(List.of(new Return(10, false, 1)), USUAL);
    Retention halves =
        Retention.fitted(List.of(new Return(10, false, .5), new Return(10, false, .5)), USUAL);

    assertThat(halves.shareAfter(10)).isCloseTo(whole.shareAfter(10), within(1e-12));
  }

  @Test
  void extremesAreNumbersToo() {
    List<Return> returns = new ArrayList<>(Collections.nCopies(5_000, new Return(700, false, 1)));
    Retention retention = Retention.fitted(returns, USUAL);

    assertThat(retention.shareAfter(700)).isBetween(0.0, 0.01);
    assertThat(retention.varianceOfFall()).isPositive().isFinite();
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> new Return(-1, true, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Return(1, true, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  private static List<Return> returns(Object... daysAndClean) {
    List<Return> returns = new ArrayList<>();
    for (int i = 0; i < daysAndClean.length; i += 2) {
      Return one = new Return((Integer) daysAndClean[i], (Boolean) daysAndClean[i + 1], 1);
      returns.addAll(Collections.nCopies(3, one));
    }
    return returns;
  }

  private static List<Return> with(List<Return> returns, double days, boolean clean) {
    List<Return> more = new ArrayList<>(returns);
    more.add(new Return(days, clean, 1));
    return more;
  }

  private static List<Return> random(SplittableRandom random, int size) {
    List<Return> returns = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      returns.add(
          new Return(random.nextInt(90), random.nextDouble() < 0.75, random.nextDouble(.1, 1)));
    }
    return returns;
  }
}
