package dev.poleward.load.outlook;

import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.outlook.DogCase;
import dev.poleward.domain.outlook.Schooling;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeInForce;
import java.time.Duration;
import java.time.Instant;
import java.util.SplittableRandom;

/** Simulated dogs of a club, taught by a plain trainer twice a week, ten reps each time. */
public final class Kennel {

  /** When all of them begin. */
  public static final Instant BEGIN = Instant.parse("2026-01-05T18:00:00Z");

  /** Reps of a session. */
  public static final int REPS = 10;

  /** Time from one session to the next. */
  public static final Duration APART = Duration.ofHours(84);

  private final Programme programme;

  /** Dogs that are taught that. */
  public Kennel(Programme programme) {
    this.programme = programme;
  }

  /** A dog after so many weeks; the same seed is the same dog. */
  public Schooling dog(long seed, int weeks) {
    SplittableRandom random = new SplittableRandom(seed);
    SimulatedDog dog = new SimulatedDog(Population.CLUB.draw(random));
    Schooling schooling = new Schooling("dog-" + seed, dog, programme, random);
    for (int session = 0; session < 2 * weeks; session++) {
      schooling.session(BEGIN.plus(APART.multipliedBy(session)), REPS);
    }
    return schooling;
  }

  /** The dog as an outlook sees it. */
  public DogCase seen(Schooling schooling, String name) {
    StandingReading reading = StandingReading.begun(programme, null);
    schooling.reps().forEach(reading::read);
    // Nothing but the programme itself is looked at.
    StandingHistory standing = new StandingHistory(reading, new ProgrammeInForce.Unassigned());
    return new DogCase(name, schooling.reps(), standing, null);
  }
}
