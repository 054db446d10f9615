package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ClubRetentionTest {

  private static final Retention USUAL = Retention.USUAL;

  @Test
  void ofAClubOfWhichNothingIsKnownTheUsualIsExpected() {
    assertThat(ClubRetention.of(List.of())).isEqualTo(ClubRetention.UNKNOWN);
    assertThat(ClubRetention.UNKNOWN.expected()).isEqualTo(USUAL);
  }

  @Test
  void aDogThatShowsNothingChangesNothing() {
    Retention expected = ClubRetention.of(List.of(new DogSay(USUAL, 1))).expected();

    assertThat(expected.logitAtOnce()).isCloseTo(USUAL.logitAtOnce(), within(1e-12));
    assertThat(expected.fall()).isCloseTo(USUAL.fall(), within(1e-12));
    assertThat(expected.varianceAtOnce()).isCloseTo(USUAL.varianceAtOnce(), within(1e-12));
    assertThat(expected.covariance()).isCloseTo(0, within(1e-12));
    assertThat(expected.varianceOfFall()).isCloseTo(USUAL.varianceOfFall(), within(1e-12));
  }

  /** As it is stated: three quarters between the dogs of a club, so that the usual counts as 3. */
  @Test
  void aDogThatIsKnownThroughAndThroughCountsAsOneAgainstThree() {
    Retention known = new Retention(USUAL.logitAtOnce() - 2, USUAL.fall() + 1, 1e-9, 0, 1e-9);

    Retention expected = ClubRetention.of(List.of(new DogSay(known, 300))).expected();

    assertThat(expected.logitAtOnce()).isCloseTo(USUAL.logitAtOnce() - 0.5, within(1e-6));
    assertThat(expected.fall()).isCloseTo(USUAL.fall() + 0.25, within(1e-6));
    // Between dogs, and what is left of the doubt about the middle: 3/4 + 3/16.
    assertThat(expected.varianceAtOnce()).isCloseTo(15.0 / 16, within(1e-6));
  }

  /**
   * Eight schools: Rubin 1981, as in Gelman et al., Bayesian Data Analysis, section 5.5. All alike,
   * the mean is 7.7 with an error of 4.1 [M].
   */
  @Test
  void theSchoolsAllAlike() {
    double[] effects = {28, 8, -3, 7, -1, 1, 18, 12};
    double[] errors = {15, 10, 16, 11, 9, 11, 10, 18};
    Retention anything = new Retention(0, 0, 1e8, 0, 1);
    List<DogSay> schools = new ArrayList<>();
    for (int i = 0; i < effects.length; i++) {
      double variance = 1 / (1 / anything.varianceAtOnce() + 1 / (errors[i] * errors[i]));
      double likeliest = variance * effects[i] / (errors[i] * errors[i]);
      schools.add(new DogSay(new Retention(likeliest, 0, variance, 0, 1), 1));
    }

    Retention expected = ClubRetention.of(schools, anything, 1 - 1e-9).expected();

    assertThat(expected.logitAtOnce()).isCloseTo(7.7, within(0.05));
    assertThat(Math.sqrt(expected.varianceAtOnce())).isCloseTo(4.1, within(0.05));
  }

  /**
   * In both numbers at once the middle is the likeliest for dogs that lie about it with variance D
   * + J⁻¹, J the precision of what each says; inverted here, and nowhere in what is tested.
   */
  @Test
  void bothNumbersTogetherAreTheLikeliest() {
    SplittableRandom random = new SplittableRandom(3);
    for (int club = 0; club < 100; club++) {
      double[][] precision =
          inverse(matrix(USUAL.varianceAtOnce() / 4, 0, USUAL.varianceOfFall() / 4));
      double[] said = {0, 0};
      List<DogSay> dogs = new ArrayList<>();
      for (int dog = 0; dog < 5; dog++) {
        double one = random.nextDouble(0.5, 3);
        double other = random.nextDouble(-1, 6);
        double[][] own = matrix(one * one + 0.2, one * other, other * other + 0.3);
        double[] place = {random.nextDouble(-2, 2), random.nextDouble(-1, 1)};
        dogs.add(new DogSay(underTheUsual(own, place), 1));
        double[][] about = inverse(own);
        about[0][0] += USUAL.varianceAtOnce() * 3 / 4;
        about[1][1] += USUAL.varianceOfFall() * 3 / 4;
        double[][] tells = inverse(about);
        for (int i = 0; i < 2; i++) {
          for (int j = 0; j < 2; j++) {
            precision[i][j] += tells[i][j];
            said[i] += tells[i][j] * place[j];
          }
        }
      }
      double[][] doubt = inverse(precision);

      Retention expected = ClubRetention.of(dogs).expected();

      assertThat(expected.logitAtOnce() - USUAL.logitAtOnce())
          .isCloseTo(doubt[0][0] * said[0] + doubt[0][1] * said[1], within(1e-9));
      assertThat(expected.fall() - USUAL.fall())
          .isCloseTo(doubt[1][0] * said[0] + doubt[1][1] * said[1], within(1e-9));
      assertThat(expected.varianceAtOnce()).isCloseTo(0.75 + doubt[0][0], within(1e-9));
      assertThat(expected.covariance()).isCloseTo(doubt[0][1], within(1e-9));
    }
  }

  /** A dog whose returns say that it lies there, from the usual, with that precision. */
  private static Retention underTheUsual(double[][] own, double[] place) {
    double[][] variance =
        inverse(
            matrix(
                own[0][0] + 1 / USUAL.varianceAtOnce(),
                own[0][1],
                own[1][1] + 1 / USUAL.varianceOfFall()));
    double x = own[0][0] * place[0] + own[0][1] * place[1];
    double y = own[1][0] * place[0] + own[1][1] * place[1];
    return new Retention(
        USUAL.logitAtOnce() + variance[0][0] * x + variance[0][1] * y,
        USUAL.fall() + variance[1][0] * x + variance[1][1] * y,
        variance[0][0],
        variance[0][1],
        variance[1][1]);
  }

  private static double[][] matrix(double xx, double xy, double yy) {
    return new double[][] {{xx, xy}, {xy, yy}};
  }

  private static double[][] inverse(double[][] of) {
    double det = of[0][0] * of[1][1] - of[0][1] * of[1][0];
    return matrix(of[1][1] / det, -of[0][1] / det, of[0][0] / det);
  }

  /**
   * Simulated, seed 7: clubs and dogs drawn as they are expected to differ. Of a dog with few
   * returns of its own, the next are foretold better with its club than without, in likelihood.
   */
  @Test
  void whoKnowsTheClubForetellsBetter() {
    SplittableRandom random = new SplittableRandom(7);
    double with = 0;
    double without = 0;
    for (int club = 0; club < 400; club++) {
      double[] middle = drawn(random, USUAL.logitAtOnce(), USUAL.fall(), 0.25);
      List<DogSay> others = new ArrayList<>();
      for (int dog = 0; dog < 12; dog++) {
        List<Return> returns = returns(random, drawn(random, middle[0], middle[1], 0.75), 40);
        others.add(new DogSay(Retention.fitted(returns, USUAL), returns.size()));
      }
      double[] dog = drawn(random, middle[0], middle[1], 0.75);
      List<Return> few = returns(random, dog, 3);
      Retention known = Retention.fitted(few, ClubRetention.of(others).expected());
      Retention alone = Retention.fitted(few, USUAL);
      for (Return next : returns(random, dog, 40)) {
        with += likelihood(known, next);
        without += likelihood(alone, next);
      }
    }

    assertThat(with - without).isGreaterThan(100);
  }

  private static double[] drawn(SplittableRandom random, double atOnce, double fall, double part) {
    return new double[] {
      atOnce + Math.sqrt(part * USUAL.varianceAtOnce()) * random.nextGaussian(),
      fall + Math.sqrt(part * USUAL.varianceOfFall()) * random.nextGaussian()
    };
  }

  private static List<Return> returns(SplittableRandom random, double[] dog, int number) {
    List<Return> returns = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      double days = random.nextInt(2, 60);
      double share = Retention.chance(dog[0] - dog[1] * Math.log1p(days));
      returns.add(new Return(days, random.nextDouble() < share, 1));
    }
    return returns;
  }

  private static double likelihood(Retention of, Return seen) {
    double share = of.shareAfter(seen.daysAway());
    return Math.log(seen.clean() ? share : 1 - share);
  }
}
