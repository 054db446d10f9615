package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NormalClubTest {

  /** Effects and errors of coaching in eight schools: Rubin 1981, as in Gelman et al. [M]. */
  private static final List<SeenDog> SCHOOLS =
      List.of(
          new SeenDog(28, 15),
          new SeenDog(8, 10),
          new SeenDog(-3, 16),
          new SeenDog(7, 11),
          new SeenDog(-1, 9),
          new SeenDog(1, 11),
          new SeenDog(18, 10),
          new SeenDog(12, 18));

  /** Bayesian Data Analysis, section 5.5: all alike, the mean is 7.7 with an error of 4.1 [M]. */
  @Test
  void theSchoolsAllAlike() {
    SeenDog mean = NormalClub.mean(SCHOOLS, 0);

    assertThat(mean.estimate()).isCloseTo(7.7, within(0.05));
    assertThat(mean.error()).isCloseTo(4.1, within(0.05));
  }

  /** With nothing in common each counts the same, and the mean is the plain one. */
  @Test
  void theSchoolsWithNothingInCommon() {
    assertThat(NormalClub.mean(SCHOOLS, 1e6).estimate()).isCloseTo(70.0 / 8, within(1e-6));
  }

  @Test
  void aClubOfNobodyIsThePopulation() {
    assertThat(NormalClub.of(List.of())).isEqualTo(Normal.STANDARD);
  }

  @Test
  void dogsThatSayNothingLeaveWhatWasExpected() {
    Normal club = NormalClub.of(List.of(new SeenDog(5, 1e6), new SeenDog(-7, 1e6)));

    assertThat(club.mean()).isCloseTo(0, within(1e-6));
    assertThat(club.deviation()).isCloseTo(1, within(1e-6));
  }

  @Test
  void aClubOfManyIsItself() {
    SplittableRandom random = new SplittableRandom(1);
    List<SeenDog> dogs = new ArrayList<>();
    for (int dog = 0; dog < 2_000; dog++) {
      double own = 0.8 + 0.5 * random.nextGaussian();
      dogs.add(new SeenDog(own + 0.6 * random.nextGaussian(), 0.6));
    }
    Normal club = NormalClub.of(dogs);

    assertThat(club.mean()).isCloseTo(0.8, within(0.05));
    assertThat(club.deviation()).isCloseTo(0.5, within(0.05));
  }

  @Test
  void whatARecordSaysIsWhatMovedTheExpectation() {
    Normal expected = new Normal(0.5, 2);
    // Precisions 0.25 and 4 with means 0.5 and 1.
    Normal afterwards = new Normal((0.25 * 0.5 + 4 * 1) / 4.25, 1 / Math.sqrt(4.25));

    SeenDog own = SeenDog.between(expected, afterwards);

    assertThat(own).isNotNull();
    assertThat(own.estimate()).isCloseTo(1, within(1e-12));
    assertThat(own.error()).isCloseTo(0.5, within(1e-12));
    assertThat(SeenDog.between(expected, expected)).isNull();
  }
}
