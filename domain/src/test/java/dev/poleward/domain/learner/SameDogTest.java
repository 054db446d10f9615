package dev.poleward.domain.learner;

import static dev.poleward.domain.learner.Evenings.BEGIN;
import static dev.poleward.domain.learner.Evenings.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.event.Outcome;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** The same temper, calls and luck give the same dog; and what a rep may come to. */
class SameDogTest {

  private static List<Attempt> attempts(SimulatedDog dog, RandomGenerator luck, int reps) {
    List<Attempt> attempts = new ArrayList<>();
    for (int i = 0; i < reps; i++) {
      attempts.add(dog.attempt(at(i % 7 * 15 - 45), BEGIN.plusSeconds(400L * i), luck));
      dog.rewarded(i % 3);
    }
    return attempts;
  }

  @Test
  void theSameSeedIsTheSameDog() {
    Temper temper = Population.CLUB.draw(new SplittableRandom(4));

    assertThat(Population.CLUB.draw(new SplittableRandom(4))).isEqualTo(temper);
    assertThat(Population.CLUB.draw(new SplittableRandom(5))).isNotEqualTo(temper);
    assertThat(attempts(new SimulatedDog(temper), new SplittableRandom(6), 300))
        .isEqualTo(attempts(new SimulatedDog(temper), new SplittableRandom(6), 300))
        .isNotEqualTo(attempts(new SimulatedDog(temper), new SplittableRandom(7), 300));
  }

  @Test
  void withoutSpreadEveryDogIsTheMiddleOne() {
    assertThat(new Population(Temper.STEADY, 0, 0).draw(new SplittableRandom(1)))
        .isEqualTo(Temper.STEADY);
  }

  @Test
  void aTwinGoesItsOwnWay() {
    SimulatedDog dog = new SimulatedDog(Temper.QUICK);
    attempts(dog, new SplittableRandom(1), 50);
    SimulatedDog twin = dog.copy();
    SimulatedDog other = dog.copy();
    Evenings.run(other, 50, at(60), BEGIN.plusSeconds(30_000), new SplittableRandom(2));

    assertThat(twin.chanceOfEntry(at(60)))
        .isEqualTo(dog.chanceOfEntry(at(60)))
        .isLessThan(other.chanceOfEntry(at(60)));
  }

  @Test
  void aRepComesToWhatARepCanComeTo() {
    SimulatedDog dog = new SimulatedDog(Temper.SENSITIVE);
    List<Attempt> attempts = attempts(dog, new SplittableRandom(12), 4_000);
    Set<Outcome> seen = EnumSet.noneOf(Outcome.class);

    for (Attempt attempt : attempts) {
      seen.add(attempt.outcome());
      assertThat(attempt.drive()).isBetween(1, 3);
      Double seconds = attempt.seconds();
      assertThat(seconds != null).isEqualTo(attempt.outcome() == Outcome.CLEAN);
      if (seconds != null) {
        assertThat(seconds).isBetween(3 / 5.5, 6.0);
      }
      Integer pole = attempt.atPole();
      if (pole != null) {
        assertThat(pole).isBetween(1, 4);
      }
    }
    assertThat(seen).isEqualTo(EnumSet.complementOf(EnumSet.of(Outcome.VOID)));
  }

  @Test
  void whatLiesOutOfRangeIsRefused() {
    assertThatThrownBy(() -> new Temper.Memory(0, 0.5, 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("halfLifeDays");
    assertThatThrownBy(() -> new Temper.Side(0.04, 0.01, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("rate");
    assertThatThrownBy(() -> Task.plain(new dev.poleward.domain.layout.EntryAngle(0), 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
