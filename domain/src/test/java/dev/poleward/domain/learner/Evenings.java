package dev.poleward.domain.learner;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntryAngle;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** What tests of the learner share: two evenings a week at four poles. */
final class Evenings {

  static final Instant BEGIN = Instant.parse("2026-01-05T18:00:00Z");

  private static final int REPS = 8;
  private static final Duration BETWEEN_REPS = Duration.ofSeconds(45);

  private Evenings() {}

  /** When an evening begins, the first being 0. */
  static Instant evening(int number) {
    return BEGIN.plus(Duration.ofDays(number / 2 * 7L + number % 2 * 3L));
  }

  static Task at(double degrees) {
    return Task.plain(new EntryAngle(degrees), 4);
  }

  /** Reps at one angle, a minute apart and paid once each. */
  static void run(SimulatedDog dog, int reps, Task task, Instant from, SplittableRandom luck) {
    for (int i = 0; i < reps; i++) {
      dog.attempt(task, from.plusSeconds(60L * i), luck);
      dog.rewarded(1);
    }
  }

  /** Rungs from straight on to an angle, 7.5 degrees apart. */
  static List<Double> rungsTo(double degrees) {
    return IntStream.rangeClosed(0, (int) (degrees / 7.5)).mapToObj(rung -> rung * 7.5).toList();
  }

  /** Weeks of two evenings until a dog has climbed to an angle on both sides, at most 200. */
  static int weeksTo(double degrees, Temper temper, long seed) {
    SimulatedDog dog = new SimulatedDog(temper);
    SplittableRandom luck = new SplittableRandom(seed);
    RungByRung ladder = new RungByRung(rungsTo(degrees), 1);
    for (int evening = 0; evening < 400; evening++) {
      Instant time = evening(evening);
      for (int rep = 0; rep < REPS; rep++) {
        time = time.plus(BETWEEN_REPS);
        Attempt attempt = dog.attempt(at(ladder.next().degrees()), time, luck);
        dog.rewarded(attempt.outcome() == Outcome.CLEAN ? 1 : 0);
        ladder.ran(attempt.entryMade());
        if (ladder.done()) {
          return evening / 2 + 1;
        }
      }
    }
    return 200;
  }
}
