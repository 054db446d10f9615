package dev.poleward.domain.outlook;

import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Temper;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Draws dogs that could have run a record: traits about the likeliest, everything else as the
 * population has it; those whose record is likelier are taken more often (sampling importance
 * resampling; Rubin 1988). Where a few would be taken for all, likelihoods count for less, just so
 * much that a quarter of the candidates still weigh.
 */
final class Twins {

  /** Reps that are replayed for one drawing, but for as many candidates as are asked for. */
  private static final int REPLAYED_MAX = 150_000;

  private static final int CANDIDATES_MAX = 300;
  private static final int CANDIDATES_MIN = 60;

  /** Part of the candidates that has to weigh. */
  private static final double WEIGHING = 0.25;

  private static final int HALVINGS = 30;

  /** Everything that is no trait; rates go with quickness alone. */
  static final Population OTHERS =
      new Population(Population.CLUB.middle(), 0, Population.CLUB.spread());

  private record Candidate(SimulatedDog dog, double logWeight) {}

  private Twins() {}

  /** So many, as they stand after the record's last rep. */
  static List<SimulatedDog> of(
      Replay replay, ClubOfDogs club, TraitFit.Top top, int number, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int reps = Math.max(1, replay.reps());
    int candidates = Math.clamp(REPLAYED_MAX / reps, CANDIDATES_MIN, CANDIDATES_MAX);
    List<Candidate> drawn = new ArrayList<>();
    for (int i = 0; i < candidates; i++) {
      drawn.add(candidate(replay, club, top, random));
    }
    return taken(drawn, weights(drawn), number, random.nextDouble());
  }

  private static Candidate candidate(
      Replay replay, ClubOfDogs club, TraitFit.Top top, SplittableRandom random) {
    double[] off = new double[Trait.COUNT];
    double logProposal = 0;
    for (int i = 0; i < off.length; i++) {
      off[i] = random.nextGaussian();
      logProposal -= off[i] * off[i] / 2;
    }
    Temper others = OTHERS.draw(random);
    double[] traits = top.curvature().solvedByUpper(off);
    double logPrior = 0;
    for (int i = 0; i < traits.length; i++) {
      traits[i] = Math.clamp(traits[i] + top.traits()[i], -TraitFit.FARTHEST, TraitFit.FARTHEST);
      logPrior += club.traits().get(i).logHeight(traits[i]);
    }
    SimulatedDog dog = new SimulatedDog(Tempers.of(traits, others));
    double logLikelihood = replay.logLikelihood(replay.expected(dog));
    return new Candidate(dog, logLikelihood + logPrior - logProposal);
  }

  private static double[] weights(List<Candidate> drawn) {
    double[] full = weights(drawn, 1);
    if (weighing(full) >= WEIGHING) {
      return full;
    }
    double low = 0;
    double high = 1;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      if (weighing(weights(drawn, middle)) >= WEIGHING) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return weights(drawn, low);
  }

  /** Weights that sum to 1. */
  private static double[] weights(List<Candidate> drawn, double power) {
    double most = drawn.stream().mapToDouble(Candidate::logWeight).max().orElseThrow();
    double[] weights = new double[drawn.size()];
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      weights[i] = StrictMath.exp(power * (drawn.get(i).logWeight() - most));
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return weights;
  }

  /** The effective share of candidates (Kish 1965): 1 when all weigh alike. */
  private static double weighing(double[] weights) {
    double squares = 0;
    for (double weight : weights) {
      squares += weight * weight;
    }
    return 1 / squares / weights.length;
  }

  /** Takes systematically: each as often as it weighs, or once more. */
  private static List<SimulatedDog> taken(
      List<Candidate> drawn, double[] weights, int number, double start) {
    List<SimulatedDog> taken = new ArrayList<>(number);
    double passed = 0;
    int at = -1;
    for (int i = 0; i < number; i++) {
      double place = (start + i) / number;
      while (passed <= place && at < drawn.size() - 1) {
        passed += weights[++at];
      }
      taken.add(drawn.get(at).dog().copy());
    }
    return taken;
  }
}
