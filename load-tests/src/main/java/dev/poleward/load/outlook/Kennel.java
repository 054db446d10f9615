package dev.poleward.load.outlook;

import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.outlook.ClubOfDogs;
import dev.poleward.domain.outlook.DogCase;
import dev.poleward.domain.outlook.Schooling;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.random.RandomGenerator;

/** Simulated dogs, taught by a plain trainer twice a week, ten reps each time. */
public final class Kennel {

  /** When all of them begin. */
  public static final Instant BEGIN = Instant.parse("2026-01-05T18:00:00Z");

  /** Reps of a session. */
  public static final int REPS = 10;

  /** Time from one session to the next. */
  public static final Duration APART = Duration.ofHours(84);

  private final Programme programme;
  private final Function<RandomGenerator, Temper> drawing;

  private Kennel(Programme programme, Function<RandomGenerator, Temper> drawing) {
    this.programme = programme;
    this.drawing = drawing;
  }

  /** Dogs that differ as those of a club do, who are taught that. */
  public static Kennel ofClub(Programme programme) {
    return new Kennel(programme, Population.CLUB::draw);
  }

  /** Dogs that are just what a fit expects of a dog that nobody knows. */
  public static Kennel asExpected(Programme programme) {
    return new Kennel(programme, ClubOfDogs.UNKNOWN::draw);
  }

  /** What they are taught. */
  Programme programme() {
    return programme;
  }

  /** A dog after so many weeks; the same seed is the same dog. */
  public Schooling dog(long seed, int weeks) {
    SplittableRandom random = new SplittableRandom(seed);
    SimulatedDog dog = new SimulatedDog(drawing.apply(random));
    Schooling schooling = new Schooling("dog-" + seed, dog, programme, random);
    for (int session = 0; session < 2 * weeks; session++) {
      schooling.session(BEGIN.plus(APART.multipliedBy(session)), REPS);
    }
    return schooling;
  }

  /** A dog of that record as an outlook sees it. */
  DogCase seen(List<PlacedRep> reps, String name) {
    StandingReading reading = StandingReading.begun(programme, null);
    reps.forEach(reading::read);
    // Nothing but the programme itself is looked at.
    StandingHistory standing = new StandingHistory(reading, new ProgrammeInForce.Unassigned());
    return new DogCase(name, reps, standing, ExpectedRetention.USUAL, null);
  }
}
