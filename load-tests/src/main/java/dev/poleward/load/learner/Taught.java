package dev.poleward.load.learner;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.learner.Attempt;
import dev.poleward.domain.learner.RungByRung;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Task;
import dev.poleward.domain.learner.Temper;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A simulated dog with a plain trainer: eight reps at four poles, two evenings a week, from
 * straight on to 90 degrees in rungs of 7.5. For one thread.
 */
public final class Taught {

  /** What is run, from wherever. */
  public static final Task FOUR_POLES = Task.plain(EntryAngle.STRAIGHT, 4);

  private static final Instant BEGIN = Instant.parse("2026-01-05T18:00:00Z");
  private static final int REPS = 8;
  private static final double RUNG = 7.5;
  private static final int RUNGS = 13;

  private final SimulatedDog dog;
  private final SplittableRandom luck;
  private final RungByRung ladder = new RungByRung(rungs(), 1);
  private int week;

  /** A dog before its first evening. */
  public Taught(Temper temper, long seed) {
    this.dog = new SimulatedDog(temper);
    this.luck = new SplittableRandom(seed);
  }

  private static List<Double> rungs() {
    return IntStream.range(0, RUNGS).mapToObj(rung -> rung * RUNG).toList();
  }

  /** The dog as it stands. */
  public SimulatedDog dog() {
    return dog;
  }

  /** A week with two evenings. */
  public void train() {
    evening(Duration.ofDays(7L * week));
    evening(Duration.ofDays(7L * week + 3));
    week++;
    dog.restUntil(BEGIN.plus(Duration.ofDays(7L * week - 1)));
  }

  /** A week without any. */
  public void rest() {
    week++;
    dog.restUntil(BEGIN.plus(Duration.ofDays(7L * week - 1)));
  }

  private void evening(Duration since) {
    Instant time = BEGIN.plus(since);
    for (int rep = 0; rep < REPS; rep++) {
      time = time.plusSeconds(45);
      Attempt attempt = dog.attempt(FOUR_POLES.from(ladder.next()), time, luck);
      dog.rewarded(attempt.outcome() == Outcome.CLEAN ? 1 : 0);
      ladder.ran(attempt.entryMade());
    }
  }
}
