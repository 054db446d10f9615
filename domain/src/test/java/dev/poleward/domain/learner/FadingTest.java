package dev.poleward.domain.learner;

import static dev.poleward.domain.learner.Evenings.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What time without practice takes away, and how it comes back. */
class FadingTest {

  private static final Task TASK = at(45);
  private static final Instant LAST = Evenings.BEGIN.plus(Duration.ofDays(30));

  private static SimulatedDog taught() {
    SimulatedDog dog = new SimulatedDog(Temper.ORDINARY);
    SplittableRandom luck = new SplittableRandom(8);
    for (int evening = 0; evening < 8; evening++) {
      Evenings.run(dog, 12, TASK, Evenings.evening(evening), luck);
    }
    dog.restUntil(LAST);
    return dog;
  }

  private static double chanceAfterDays(long days) {
    SimulatedDog dog = taught();
    dog.restUntil(LAST.plus(Duration.ofDays(days)));
    return dog.chanceOfEntry(TASK);
  }

  @Test
  void skillFadesTheLongerTheMore() {
    double[] chances =
        IntStream.of(365, 180, 90, 30, 7, 0).mapToDouble(FadingTest::chanceAfterDays).toArray();

    assertThat(chances).isSorted();
    assertThat(chances[5] - chances[3]).isGreaterThan(0.02);
  }

  @Test
  void partOfItStaysForGood() {
    double untaught = new SimulatedDog(Temper.ORDINARY).chanceOfEntry(TASK);

    assertThat(Logit.of(chanceAfterDays(3_650)) - Logit.of(untaught))
        .isGreaterThan(
            0.9
                * Temper.ORDINARY.memory().kept()
                * (Logit.of(chanceAfterDays(0)) - Logit.of(untaught)))
        .isLessThan(Logit.of(chanceAfterDays(0)) - Logit.of(untaught));
  }

  @Test
  void whatWasKnownComesBackQuickerThanItWasLearned() {
    SimulatedDog back = taught();
    back.restUntil(LAST.plus(Duration.ofDays(120)));
    double from = back.chanceOfEntry(TASK);
    SimulatedDog fresh = new SimulatedDog(Temper.ORDINARY);
    SplittableRandom luck = new SplittableRandom(9);
    Instant begin = LAST.plus(Duration.ofDays(121));
    while (fresh.chanceOfEntry(TASK) < from) {
      fresh.attempt(TASK, begin, luck);
    }
    double fromFresh = fresh.chanceOfEntry(TASK);

    for (int rep = 0; rep < 5; rep++) {
      fresh.attempt(TASK, begin, new SplittableRandom(rep));
      back.attempt(TASK, begin, new SplittableRandom(rep));
    }

    assertThat(back.chanceOfEntry(TASK) - from)
        .isGreaterThan(fresh.chanceOfEntry(TASK) - fromFresh);
  }

  @Test
  void timeDoesNotRunBackwards() {
    SimulatedDog dog = taught();

    assertThatThrownBy(() -> dog.restUntil(LAST.minusSeconds(1)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
