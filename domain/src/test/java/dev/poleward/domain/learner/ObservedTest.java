package dev.poleward.domain.learner;

import static dev.poleward.domain.learner.Evenings.BEGIN;
import static dev.poleward.domain.learner.Evenings.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.event.Outcome;
import java.time.Instant;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A dog that is put through what another one ran becomes that other dog. */
class ObservedTest {

  @Test
  void knownOutcomesTeachWhatRunsTeach() {
    for (Temper temper : new Temper[] {Temper.QUICK, Temper.SENSITIVE, Temper.BOLD}) {
      SimulatedDog runs = new SimulatedDog(temper);
      SimulatedDog isTold = new SimulatedDog(temper);
      SplittableRandom luck = new SplittableRandom(3);
      for (int i = 0; i < 400; i++) {
        Instant time = BEGIN.plusSeconds(90_000L * (i / 10) + 60L * i);
        Task task = at(i % 9 * 20 - 80);
        Attempt attempt = runs.attempt(task, time, luck);
        isTold.observed(task, attempt.outcome(), attempt.entryMade(), time);
        runs.rewarded(i % 3);
        isTold.rewarded(i % 3);
      }
      for (int angle = -90; angle <= 90; angle += 15) {
        assertThat(isTold.chanceOfClean(at(angle))).isEqualTo(runs.chanceOfClean(at(angle)));
      }
    }
  }

  @Test
  void whatIsExpectedIsWhatAFreshDogsChanceIs() {
    SimulatedDog dog = new SimulatedDog(Temper.ORDINARY);
    double entry = dog.chanceOfEntry(at(30));
    double clean = dog.chanceOfClean(at(30));

    Expected expected = dog.observed(at(30), Outcome.CLEAN, true, BEGIN);

    assertThat(expected.entry()).isEqualTo(entry);
    assertThat(expected.entry() * expected.through()).isEqualTo(clean);
    assertThat(dog.chanceOfEntry(at(30))).isGreaterThan(entry);
  }

  @Test
  void noAttemptTeachesNothingAndVoidIsRefused() {
    SimulatedDog dog = new SimulatedDog(Temper.ORDINARY);
    double entry = dog.chanceOfEntry(at(30));

    dog.observed(at(30), Outcome.NO_ATTEMPT, false, BEGIN);

    assertThat(dog.chanceOfEntry(at(30))).isEqualTo(entry);
    assertThatThrownBy(() -> dog.observed(at(30), Outcome.VOID, true, BEGIN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
