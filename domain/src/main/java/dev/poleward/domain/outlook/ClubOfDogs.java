package dev.poleward.domain.outlook;

import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What a club's dogs are like, trait by trait: what is expected of one more of them.
 *
 * @param traits in the order of {@link Trait}
 * @param dogs how many spoke
 */
public record ClubOfDogs(List<Normal> traits, int dogs) {

  /** Dogs of a club that are looked at; more would not say much more, and take time. */
  public static final int DOGS_MAX = 30;

  /** The first reps of each that are looked at: where a dog learns most, it shows how fast. */
  public static final int REPS_MAX = 250;

  /** A dog with fewer reps does not speak. */
  public static final int REPS_MIN = 20;

  private static final int STEPS = 2;

  /** Where no club is known: the population that the learner draws from. */
  public static final ClubOfDogs UNKNOWN =
      new ClubOfDogs(Collections.nCopies(Trait.COUNT, Normal.STANDARD), 0);

  /** Keeps the traits from changing. */
  public ClubOfDogs {
    traits = List.copyOf(traits);
  }

  /**
   * Of the records of a club's dogs, guests left out, and without the dog that is asked about,
   * whose own record is not to count twice. Those after the first {@link #DOGS_MAX} that have
   * enough reps are not looked at.
   *
   * @param records ascending by (time, id) each, the dogs in an order that does not depend on how
   *     their events arrived
   */
  public static ClubOfDogs of(Iterable<List<PlacedRep>> records) {
    List<List<SeenDog>> seen = new ArrayList<>();
    for (int i = 0; i < Trait.COUNT; i++) {
      seen.add(new ArrayList<>());
    }
    int dogs = 0;
    for (List<PlacedRep> record : records) {
      List<SeenRep> reps = SeenRep.of(record);
      if (reps.size() < REPS_MIN) {
        continue;
      }
      add(reps.subList(0, Math.min(reps.size(), REPS_MAX)), seen);
      if (++dogs == DOGS_MAX) {
        break;
      }
    }
    return dogs == 0 ? UNKNOWN : new ClubOfDogs(seen.stream().map(NormalClub::of).toList(), dogs);
  }

  /**
   * A dog as one more of the club is expected, everything that is no trait as the population has
   * it: by which a fit can be tried where dogs are just what it expects.
   */
  public Temper draw(RandomGenerator random) {
    double[] drawn = new double[Trait.COUNT];
    for (int i = 0; i < drawn.length; i++) {
      Normal trait = traits.get(i);
      drawn[i] =
          Math.clamp(
              trait.mean() + trait.deviation() * random.nextGaussian(),
              -TraitFit.FARTHEST,
              TraitFit.FARTHEST);
    }
    return Tempers.of(drawn, Twins.OTHERS.draw(random));
  }

  private static void add(List<SeenRep> reps, List<List<SeenDog>> seen) {
    TraitFit.Top top = TraitFit.near(new Replay(reps), UNKNOWN.traits(), STEPS);
    for (int i = 0; i < Trait.COUNT; i++) {
      Normal expected = UNKNOWN.traits().get(i);
      SeenDog own =
          SeenDog.between(
              expected, new Normal(top.traits()[i], Math.sqrt(top.curvature().inverseAt(i))));
      if (own != null) {
        seen.get(i).add(own);
      }
    }
  }
}
