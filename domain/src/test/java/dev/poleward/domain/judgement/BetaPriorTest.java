package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.poleward.domain.mastery.Confidence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BetaPriorTest {

  /** Efron and Morris 1975: hits of 18 batters in 45 at bats. */
  private static final List<Tally> BATTERS =
      IntStream.of(18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7)
          .mapToObj(hits -> new Tally(hits, 45))
          .toList();

  /** Gelman et al., Bayesian Data Analysis, chapter 5: tumours of 70 groups of rats [T]. */
  private static final int[] TUMOURS = {
    0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2, 2, 2, 1,
    5, 2, 5, 3, 2, 7, 7, 3, 3, 2, 9, 10, 4, 4, 4, 4, 4, 4, 4, 10, 4, 4, 4, 5, 11, 12, 5, 5, 6, 5, 6,
    6, 6, 6, 16, 15, 15, 9
  };

  private static final int[] RATS = {
    20, 20, 20, 20, 20, 20, 20, 19, 19, 19, 19, 18, 18, 17, 20, 20, 20, 20, 19, 19, 18, 18, 25, 24,
    23, 20, 20, 20, 20, 20, 20, 10, 49, 19, 46, 27, 17, 49, 47, 20, 20, 13, 48, 50, 20, 20, 20, 20,
    20, 20, 20, 48, 19, 19, 19, 22, 46, 49, 20, 20, 23, 19, 22, 20, 20, 20, 52, 46, 47, 24
  };

  private static final Tally THE_71ST = new Tally(4, 14);

  private static List<Tally> rats() {
    return IntStream.range(0, RATS.length).mapToObj(i -> new Tally(TUMOURS[i], RATS[i])).toList();
  }

  /** Mean .265 and weight .212 [T]; further digits and all 18 estimates [R]. */
  @Test
  void theBattersShrinkAsInEfronAndMorris() {
    BetaPrior prior = BetaPrior.byShrinkage(BATTERS);

    assertThat(prior.mean()).isCloseTo(.2654321, within(0.51e-7));
    assertThat(45 / (45 + prior.reps())).isCloseTo(.2116534, within(0.51e-7));
    double[] shrunk = {
      .293914, .289210, .284507, .279804, .275100, .275100, .270397, .265693, .260990, .260990,
      .256287, .256287, .256287, .256287, .256287, .251583, .246880, .242176
    };
    for (int i = 0; i < shrunk.length; i++) {
      assertThat(prior.after(BATTERS.get(i)).mean()).isCloseTo(shrunk[i], within(0.51e-6));
    }
  }

  /** The likelihood is very flat there: within 1% [R]. */
  @Test
  void theLikeliestOfTheBatters() {
    BetaPrior prior = BetaPrior.likeliest(BATTERS);

    assertThat(prior.clean()).isCloseTo(210.55, withinPercentage(1));
    assertThat(prior.missed()).isCloseTo(582.69, withinPercentage(1));
    assertThat(logLikelihood(BATTERS, prior)).isCloseTo(-45.34390, within(1e-5));
  }

  /** Mean and deviation [R]; Beta(1.4, 8.6), posterior .223 and .083 in the book [M]; [R]. */
  @Test
  void theRatsByMoments() {
    double mean = rats().stream().mapToDouble(Tally::share).average().orElseThrow();
    double squares = rats().stream().mapToDouble(rat -> Math.pow(rat.share() - mean, 2)).sum();
    BetaPrior prior = BetaPrior.of(mean, mean * (1 - mean) * (RATS.length - 1) / squares - 1);

    assertThat(mean).isCloseTo(.136007, within(0.51e-6));
    assertThat(prior.clean()).isCloseTo(1.356149, within(0.51e-6));
    assertThat(prior.missed()).isCloseTo(8.615058, within(0.51e-6));
    assertThat(prior.deviation()).isCloseTo(.103492, within(0.51e-6));
    assertThat(prior.after(THE_71ST).mean()).isCloseTo(.223441, within(0.51e-6));
    assertThat(prior.after(THE_71ST).deviation()).isCloseTo(.083358, within(0.51e-6));
  }

  /** [R]. */
  @Test
  void theLikeliestOfTheRats() {
    List<Tally> all = new ArrayList<>(rats());
    all.add(THE_71ST);
    BetaPrior prior = BetaPrior.likeliest(all);

    assertThat(prior.clean()).isCloseTo(2.341614, within(1e-5));
    assertThat(prior.missed()).isCloseTo(14.114804, within(1e-4));
    assertThat(logLikelihood(all, prior)).isCloseTo(-156.56893, within(0.51e-5));
    assertThat(prior.after(THE_71ST).mean()).isCloseTo(.208219, within(0.51e-6));
  }

  @Test
  void ofFewDogsOrNoneNothingIsKnown() {
    List<Tally> three = List.of(new Tally(9, 10), new Tally(8, 10), new Tally(5, 10));
    List<Tally> unseen = Collections.nCopies(10, new Tally(0, 0));

    for (List<Tally> dogs : List.of(List.<Tally>of(), three, unseen)) {
      assertThat(BetaPrior.likeliest(dogs)).isEqualTo(BetaPrior.UNKNOWN);
      assertThat(BetaPrior.byShrinkage(dogs)).isEqualTo(BetaPrior.UNKNOWN);
    }
    assertThat(BetaPrior.UNKNOWN.after(new Tally(0, 0))).isEqualTo(BetaPrior.UNKNOWN);
  }

  @Test
  void dogsThatAreAllAlikeSpeakForEachOtherAsFarAsCanBe() {
    BetaPrior prior = BetaPrior.likeliest(Collections.nCopies(12, new Tally(16, 20)));

    assertThat(prior.mean()).isCloseTo(0.8, within(1e-9));
    assertThat(prior.reps()).isCloseTo(BetaPrior.REPS_MAX, within(1e-6));
  }

  @Test
  void dogsThatHaveNothingInCommonSayNextToNothingOfEachOther() {
    List<Tally> dogs = new ArrayList<>(Collections.nCopies(6, new Tally(30, 30)));
    dogs.addAll(Collections.nCopies(6, new Tally(0, 30)));
    BetaPrior prior = BetaPrior.likeliest(dogs);

    assertThat(prior.reps()).isLessThan(1);
    assertThat(prior.mean()).isCloseTo(0.5, within(1e-6));
  }

  @Test
  void whereNobodyHasMissedADogMayStill() {
    BetaPrior prior = BetaPrior.likeliest(Collections.nCopies(5, new Tally(10, 10)));

    assertThat(prior.mean()).isCloseTo(50.5 / 51, within(1e-12));
    assertThat(BetaPrior.likeliest(Collections.nCopies(5, new Tally(0, 10))).mean())
        .isCloseTo(0.5 / 51, within(1e-12));
  }

  @Test
  void theOrderOfTheDogsDoesNotShow() {
    List<Tally> dogs = new ArrayList<>(rats());
    BetaPrior prior = BetaPrior.likeliest(dogs);
    for (int seed = 0; seed < 5; seed++) {
      Collections.shuffle(dogs, new Random(seed));
      BetaPrior shuffled = BetaPrior.likeliest(dogs);
      assertThat(shuffled.clean()).isCloseTo(prior.clean(), within(1e-7));
      assertThat(shuffled.missed()).isCloseTo(prior.missed(), within(1e-7));
    }
  }

  /** Simulated, seed 8: 400 dogs of a known club. */
  @Test
  void theClubThatMadeTheDogsIsFoundAgain() {
    SplittableRandom random = new SplittableRandom(8);
    List<Tally> dogs = new ArrayList<>();
    for (int dog = 0; dog < 400; dog++) {
      // The third smallest of four uniform numbers is Beta(3, 2).
      double share =
          IntStream.range(0, 4).mapToDouble(i -> random.nextDouble()).sorted().toArray()[2];
      int reps = 10 + random.nextInt(60);
      int clean = (int) IntStream.range(0, reps).filter(i -> random.nextDouble() < share).count();
      dogs.add(new Tally(clean, reps));
    }
    BetaPrior prior = BetaPrior.likeliest(dogs);

    assertThat(prior.mean()).isCloseTo(0.6, within(0.03));
    assertThat(prior.reps()).isCloseTo(5, within(1.0));
    assertThat(BetaPrior.byShrinkage(dogs).reps()).isCloseTo(5, within(1.5));
  }

  @Test
  void theEstimateHoldsItsMean() {
    BetaPrior prior = BetaPrior.likeliest(rats());
    var estimate = prior.after(THE_71ST).estimate(Confidence.OF_95_PERCENT);

    assertThat(estimate.value()).isEqualTo(prior.after(THE_71ST).mean());
    assertThat(estimate.lower()).isBetween(0.05, estimate.value());
    assertThat(estimate.upper()).isBetween(estimate.value(), 0.5);
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> new BetaPrior(0, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Tally(3, 2)).isInstanceOf(IllegalArgumentException.class);
  }

  private static double logLikelihood(List<Tally> dogs, BetaPrior prior) {
    return new BetaBinomialHill(dogs)
        .at(Math.log(prior.clean()), Math.log(prior.missed()))
        .height();
  }
}
