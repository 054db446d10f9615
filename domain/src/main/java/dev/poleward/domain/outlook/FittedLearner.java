package dev.poleward.domain.outlook;

import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * The learner model fitted to a dog's record: its likeliest traits and how far they can be told,
 * shrunk to the club. The record is replayed with known outcomes; a temper is the likelier, the
 * better it foresaw each rep from those before. For one thread.
 */
public final class FittedLearner {

  /** The latest reps of a record that are looked at. */
  public static final int REPS_MAX = 5_000;

  private final List<SeenRep> reps;
  private final Replay replay;
  private final ClubOfDogs club;
  private final TraitFit.Top top;

  private FittedLearner(List<SeenRep> reps, ClubOfDogs club) {
    this.reps = reps;
    this.club = club;
    this.replay = new Replay(reps);
    this.top = TraitFit.of(replay, club.traits());
  }

  /**
   * Fits a dog.
   *
   * @param reps of the dog, ascending by (time, id); the latest {@link #REPS_MAX} are looked at
   * @param club what is expected of it before it runs
   */
  public static FittedLearner of(List<PlacedRep> reps, ClubOfDogs club) {
    List<SeenRep> seen = SeenRep.of(reps);
    return new FittedLearner(seen.subList(Math.max(0, seen.size() - REPS_MAX), seen.size()), club);
  }

  /** Reps that were looked at. */
  public int reps() {
    return reps.size();
  }

  /** The club that it was shrunk to. */
  public ClubOfDogs club() {
    return club;
  }

  /** What is held of a trait, in the units of {@link Trait}. */
  public Normal trait(Trait trait) {
    return new Normal(
        top.traits()[trait.ordinal()], Math.sqrt(top.curvature().inverseAt(trait.ordinal())));
  }

  /**
   * How much of what is held of a trait comes from the dog's own reps, 0 to 1; the rest is the
   * club's.
   */
  public double shareOfOwn(Trait trait) {
    double expected = club.traits().get(trait.ordinal()).variance();
    return Math.clamp(1 - trait(trait).variance() / expected, 0, 1);
  }

  /** The likeliest temper. */
  public Temper temper() {
    return Tempers.of(top.traits());
  }

  /** The likeliest dog, as it stands after its last rep, or later. */
  public SimulatedDog standing(Instant at) {
    SimulatedDog dog = new SimulatedDog(temper());
    replay.expected(dog);
    rest(dog, at);
    return dog;
  }

  /** Dogs that could be this one, each as likely as the others; see {@link Twins}. */
  List<SimulatedDog> twins(int number, Instant at, long seed) {
    List<SimulatedDog> twins = new ArrayList<>(Twins.of(replay, club, top, number, seed));
    twins.forEach(twin -> rest(twin, at));
    return twins;
  }

  private void rest(SimulatedDog dog, Instant at) {
    if (reps.isEmpty() || !at.isBefore(reps.getLast().time())) {
      dog.restUntil(at);
    }
  }
}
