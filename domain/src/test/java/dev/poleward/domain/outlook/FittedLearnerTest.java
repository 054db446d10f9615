package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Task;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FittedLearnerTest {

  @Test
  void withoutRepsTheDogIsTheClubs() {
    FittedLearner learner = FittedLearner.of(List.of(), ClubOfDogs.UNKNOWN);

    assertThat(learner.temper()).isEqualTo(Temper.ORDINARY);
    for (Trait trait : Trait.values()) {
      assertThat(learner.trait(trait)).isEqualTo(Normal.STANDARD);
      assertThat(learner.shareOfOwn(trait)).isZero();
    }
  }

  @Test
  void nothingNearIsLikelier() {
    List<SeenRep> reps = SeenRep.of(Walkable.after(12, Temper.QUICK, 4).reps());
    Replay replay = new Replay(reps);
    TraitFit.Top top = TraitFit.of(replay, ClubOfDogs.UNKNOWN.traits());
    double height = height(replay, top.traits());
    for (Trait trait : Trait.values()) {
      for (double by : new double[] {-0.3, 0.3}) {
        double[] beside = top.traits().clone();
        beside[trait.ordinal()] += by;
        assertThat(height(replay, beside)).as("%s %s", trait, by).isLessThan(height);
      }
    }
  }

  private static double height(Replay replay, double[] traits) {
    double height = TraitFit.COUNTS * replay.logLikelihood(replay.expected(Tempers.of(traits)));
    for (double trait : traits) {
      height -= trait * trait / 2;
    }
    return height;
  }

  @Test
  void theMoreRepsTheSurer() {
    List<PlacedRep> reps = Walkable.after(20, Temper.ORDINARY, 1).reps();
    FittedLearner few = FittedLearner.of(reps.subList(0, 30), ClubOfDogs.UNKNOWN);
    FittedLearner many = FittedLearner.of(reps, ClubOfDogs.UNKNOWN);

    assertThat(many.trait(Trait.QUICKNESS).deviation())
        .isLessThan(few.trait(Trait.QUICKNESS).deviation());
    assertThat(many.shareOfOwn(Trait.QUICKNESS)).isGreaterThan(few.shareOfOwn(Trait.QUICKNESS));
  }

  /** How well is in docs/outlook.md; here, that it does at all. */
  @Test
  void quickDogsAreFoundToBeQuicker() {
    double quick = 0;
    double slow = 0;
    for (int seed = 0; seed < 12; seed++) {
      quick += quickness(Temper.ORDINARY.quicker(1.8), seed);
      slow += quickness(Temper.ORDINARY.quicker(0.55), seed);
    }
    // The truth is 1.5 units above and below the middle; a fit is drawn towards it.
    assertThat(quick / 12).isBetween(0.4, 1.6);
    assertThat(slow / 12).isBetween(-1.6, -0.4);
  }

  private static double quickness(Temper temper, long seed) {
    return FittedLearner.of(Walkable.after(16, temper, seed).reps(), ClubOfDogs.UNKNOWN)
        .trait(Trait.QUICKNESS)
        .mean();
  }

  @Test
  void aClubOfQuickDogsExpectsQuickDogs() {
    List<List<PlacedRep>> records = new ArrayList<>();
    for (int seed = 0; seed < 12; seed++) {
      records.add(Walkable.after(12, Temper.ORDINARY.quicker(2), 100 + seed).reps());
    }
    ClubOfDogs club = ClubOfDogs.of(records);

    assertThat(club.dogs()).isEqualTo(12);
    assertThat(club.traits().get(Trait.QUICKNESS.ordinal()).mean()).isGreaterThan(0.5);
    assertThat(FittedLearner.of(List.of(), club).trait(Trait.QUICKNESS).mean())
        .isEqualTo(club.traits().get(Trait.QUICKNESS.ordinal()).mean());
  }

  @Test
  void aDogOfTheClubIsDrawnAsItIsExpected() {
    SplittableRandom random = new SplittableRandom(4);
    List<Normal> traits = new ArrayList<>(ClubOfDogs.UNKNOWN.traits());
    traits.set(Trait.START.ordinal(), new Normal(1, 0.5));
    ClubOfDogs club = new ClubOfDogs(traits, 12);
    double sum = 0;
    double squares = 0;
    for (int dog = 0; dog < 4_000; dog++) {
      double off = club.draw(random).entry().straight() - Temper.ORDINARY.entry().straight();
      double start = off / Trait.START.of(new double[] {0, 1, 0, 0, 0, 0});
      sum += start;
      squares += start * start;
    }
    double mean = sum / 4_000;
    assertThat(mean).isCloseTo(1, within(0.05));
    assertThat(Math.sqrt(squares / 4_000 - mean * mean)).isCloseTo(0.5, within(0.05));
  }

  @Test
  void dogsWithFewRepsDoNotSpeakOfTheClub() {
    List<PlacedRep> few = Walkable.after(1, Temper.QUICK, 1).reps();

    assertThat(ClubOfDogs.of(List.of(few, few))).isEqualTo(ClubOfDogs.UNKNOWN);
  }

  @Test
  void twinsLieAboutTheLikeliestAndFollowTheirSeed() {
    Schooling schooling = Walkable.after(12, Temper.ORDINARY, 7);
    FittedLearner learner = FittedLearner.of(schooling.reps(), ClubOfDogs.UNKNOWN);
    Instant last = schooling.reps().getLast().moment().time();
    Task task = Task.plain(new EntryAngle(30), 4);

    List<Double> chances = chances(learner.twins(100, last, 5), task);

    assertThat(chances).isEqualTo(chances(learner.twins(100, last, 5), task));
    assertThat(chances).isNotEqualTo(chances(learner.twins(100, last, 6), task));
    double mean = chances.stream().mapToDouble(each -> each).average().orElseThrow();
    assertThat(mean).isCloseTo(learner.standing(last).chanceOfClean(task), within(0.12));
    assertThat(mean).isCloseTo(schooling.dog().chanceOfClean(task), within(0.2));
  }

  private static List<Double> chances(List<SimulatedDog> dogs, Task task) {
    return dogs.stream().map(dog -> dog.chanceOfClean(task)).toList();
  }

  @Test
  void tempersOfAnyTraitsAreInRange() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 300; i++) {
      double[] traits = new double[Trait.COUNT];
      for (int trait = 0; trait < traits.length; trait++) {
        traits[trait] = (random.nextInt(3) - 1) * TraitFit.FARTHEST;
      }
      assertThat(Tempers.of(traits, Population.CLUB.draw(random))).isNotNull();
    }
  }
}
