package dev.poleward.domain.learner;

import static dev.poleward.domain.learner.Evenings.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import java.time.Duration;
import java.time.Instant;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A dog that nothing moves any more does what its probabilities say. */
class FrozenDogTest {

  private static final int REPS = 2_000;

  /** The 0.999 quantile of chi-square with 13 degrees of freedom [S: R, qchisq(0.999, 13)]. */
  private static final double CHI_SQUARE_13 = 34.52818;

  private static SimulatedDog frozen() {
    SimulatedDog dog = new SimulatedDog(Temper.BOLD);
    SplittableRandom luck = new SplittableRandom(21);
    for (int evening = 0; evening < 12; evening++) {
      Evenings.run(dog, 5, at(30), Evenings.evening(evening), luck);
      Evenings.run(dog, 5, at(-15), Evenings.evening(evening).plus(Duration.ofHours(1)), luck);
    }
    return dog.frozen();
  }

  private static double chiSquare(double expected, int seen) {
    double apart = seen - REPS * expected;
    return apart * apart / (REPS * expected * (1 - expected));
  }

  @Test
  void observedSharesMatchItsProbabilities() {
    SimulatedDog dog = frozen();
    SplittableRandom luck = new SplittableRandom(22);
    Instant time = Evenings.evening(30);
    double chiSquareOfEntries = 0;
    double chiSquareOfClean = 0;
    for (int angle = -90; angle <= 90; angle += 15) {
      Task task = at(angle).behind(LeadIn.TUNNEL);
      double entry = dog.chanceOfEntry(task);
      double clean = dog.chanceOfClean(task);
      int made = 0;
      int faultless = 0;
      for (int rep = 0; rep < REPS; rep++) {
        time = time.plusSeconds(30);
        Attempt attempt = dog.attempt(task, time, luck);
        made += attempt.entryMade() ? 1 : 0;
        faultless += attempt.outcome() == Outcome.CLEAN ? 1 : 0;
      }
      chiSquareOfEntries += chiSquare(entry, made);
      chiSquareOfClean += chiSquare(clean, faultless);
    }

    assertThat(chiSquareOfEntries).isLessThan(CHI_SQUARE_13);
    assertThat(chiSquareOfClean).isLessThan(CHI_SQUARE_13);
  }

  @Test
  void neitherRepsNorYearsMoveIt() {
    SimulatedDog dog = frozen();
    double before = dog.chanceOfClean(at(45));

    Evenings.run(dog, 50, at(45), Evenings.evening(20), new SplittableRandom(1));
    dog.restUntil(Evenings.evening(20).plus(Duration.ofDays(3_650)));

    assertThat(dog.chanceOfClean(at(45))).isEqualTo(before);
  }

  @Test
  void atTheTrueThresholdItsChanceIsTheLevel() {
    SimulatedDog dog = frozen();
    for (double level : new double[] {0.5, 0.8, 0.9}) {
      double pole = dog.trueThreshold(EntrySide.POLE, level, at(0)).orElseThrow();
      double gap = dog.trueThreshold(EntrySide.GAP, level, at(0)).orElseThrow();

      assertThat(dog.chanceOfEntry(at(pole))).isEqualTo(level, within(1e-12));
      assertThat(dog.chanceOfEntry(at(-gap))).isEqualTo(level, within(1e-12));
      assertThat(pole).isNotEqualTo(gap);
      for (double nearer = 0; nearer < pole; nearer += 0.5) {
        assertThat(dog.chanceOfEntry(at(nearer))).isGreaterThan(level);
      }
    }
  }

  @Test
  void aThresholdMayLieAtStraightOnOrNowhere() {
    SimulatedDog dog = frozen();

    assertThat(dog.trueThreshold(EntrySide.POLE, 0.9999, at(0))).hasValue(0);
    assertThat(dog.trueThreshold(EntrySide.POLE, 1e-9, at(0))).isEmpty();
    assertThatThrownBy(() -> dog.trueThreshold(EntrySide.BOTH, 0.8, at(0)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void morePolesAndALeadInMakeItHarder() {
    SimulatedDog dog = frozen();
    Task four = at(15);
    Task twelve = Task.plain(new EntryAngle(15), 12);

    assertThat(dog.chanceOfClean(twelve)).isLessThan(dog.chanceOfClean(four));
    assertThat(dog.chanceOfEntry(twelve)).isEqualTo(dog.chanceOfEntry(four));
    assertThat(dog.chanceOfEntry(four.behind(LeadIn.JUMP))).isLessThan(dog.chanceOfEntry(four));
    assertThat(dog.chanceOfEntry(four.behind(LeadIn.TUNNEL)))
        .isLessThan(dog.chanceOfEntry(four.behind(LeadIn.JUMP)));
  }
}
