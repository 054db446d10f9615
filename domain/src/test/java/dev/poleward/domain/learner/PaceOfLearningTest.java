package dev.poleward.domain.learner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How long it takes: weeks to months, a few to 45 degrees and more to 90 [C]. */
class PaceOfLearningTest {

  private static final int DOGS = 101;

  private static int[] sortedWeeksTo(double degrees, Population population) {
    SplittableRandom litter = new SplittableRandom(11);
    return IntStream.range(0, DOGS)
        .map(dog -> Evenings.weeksTo(degrees, population.draw(litter), dog))
        .sorted()
        .toArray();
  }

  private static int medianWeeksTo(double degrees, Temper temper) {
    return sortedWeeksTo(degrees, new Population(temper, 0, 0))[DOGS / 2];
  }

  @Test
  void anOrdinaryDogTakesAFewWeeksTo45DegreesAndMonthsTo90() {
    assertThat(medianWeeksTo(45, Temper.ORDINARY)).isBetween(4, 10);
    assertThat(medianWeeksTo(90, Temper.ORDINARY)).isBetween(10, 26);
  }

  @Test
  void dogsOfAClubDifferAndNineOfTenArriveWithinAYear() {
    int[] weeks = sortedWeeksTo(90, Population.CLUB);

    assertThat(weeks[DOGS / 10]).isLessThan(weeks[DOGS / 2] * 4 / 5);
    assertThat(weeks[DOGS * 9 / 10]).isGreaterThan(weeks[DOGS / 2] * 5 / 4).isLessThan(52);
  }

  @Test
  void aQuickDogIsAheadOfAnOrdinaryOneAndThatOfASteadyOne() {
    int ordinary = medianWeeksTo(90, Temper.ORDINARY);

    assertThat(medianWeeksTo(90, Temper.QUICK)).isLessThan(ordinary);
    assertThat(medianWeeksTo(90, Temper.STEADY)).isGreaterThan(ordinary);
    assertThat(medianWeeksTo(90, Temper.SENSITIVE)).isGreaterThan(ordinary);
    assertThat(medianWeeksTo(90, Temper.BOLD)).isGreaterThan(ordinary);
  }

  @Test
  void aQuickerRateOfTheSameTemperIsNeverSlowerInTheMiddle() {
    assertThat(medianWeeksTo(60, Temper.ORDINARY.quicker(1.5)))
        .isLessThan(medianWeeksTo(60, Temper.ORDINARY));
  }
}
