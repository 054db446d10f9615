package dev.poleward.domain.judgement;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.jspecify.annotations.Nullable;

/**
 * Faults by place against an even spread over all places: reps with one number of poles, so that
 * every place had the same chance.
 *
 * @param places in their order
 * @param chance of a spread as uneven or more, were all places alike
 */
public record EvenSpread(List<Place> places, double chance) {

  /** The chance is exact for so many faults at most; above, chi-square's is near enough. */
  public static final int EXACT_MAX = 40;

  /** What rounding may take from a chance of squares. */
  private static final double ROUNDING = 1e-9;

  /** Keeps the places from changing. */
  public EvenSpread {
    places = List.copyOf(places);
  }

  /**
   * One place.
   *
   * @param faults there
   * @param share of all faults, with Wilson's limits; null where there are none: nothing was seen
   * @param standsOut whether so many or more there are too rare for an even spread, though any of
   *     the places might have been the one
   */
  public record Place(int faults, @Nullable Estimate share, boolean standsOut) {}

  /**
   * Of numbers of faults. A place stands out when the binomial chance of so many faults there,
   * times the number of places, is at most what the confidence leaves (Bonferroni): then of lines
   * where all places are alike no more than that share have any place that does.
   *
   * @param faults at each place, at least 0; may be all 0, may be none
   */
  public static EvenSpread of(List<Integer> faults, Confidence confidence) {
    int all = faults.stream().mapToInt(each -> each).sum();
    List<Place> places = new ArrayList<>();
    for (int each : faults) {
      Estimate share = all == 0 ? null : new Proportion(each, all - each).wilson(confidence);
      places.add(new Place(each, share, standsOut(each, all, faults.size(), confidence)));
    }
    return new EvenSpread(places, all == 0 || faults.size() < 2 ? 1 : chance(faults, all));
  }

  private static boolean standsOut(int here, int all, int places, Confidence confidence) {
    if (here == 0 || places < 2) {
      return false;
    }
    double chance = BinomialDistribution.of(all, 1.0 / places).survivalProbability(here - 1);
    return chance * places <= 1 - confidence.level();
  }

  /** Pearson's test: for equal places it depends on the sum of squares alone. */
  private static double chance(List<Integer> faults, int all) {
    int squares = faults.stream().mapToInt(each -> each * each).sum();
    int places = faults.size();
    if (all <= EXACT_MAX) {
      return exactly(squares, places, all);
    }
    double statistic = (double) places * squares / all - all;
    return ChiSquaredDistribution.of(places - 1).survivalProbability(statistic);
  }

  /**
   * The chance of at least that sum of squares, over all ways that the faults can fall: place after
   * place, how likely so many faults have fallen with that sum.
   */
  private static double exactly(int squares, int places, int all) {
    // The first place gets its binomial share of all, the next one of what is left, and so on.
    double[][] chances = new double[all + 1][all * all + 1];
    chances[0][0] = 1;
    for (int place = 0; place < places; place++) {
      double[][] next = new double[all + 1][all * all + 1];
      for (int fallen = 0; fallen <= all; fallen++) {
        double[] here = binomial(all - fallen, 1.0 / (places - place));
        for (int sum = 0; sum <= fallen * fallen; sum++) {
          double chance = chances[fallen][sum];
          if (chance > 0) {
            for (int more = 0; more < here.length; more++) {
              next[fallen + more][sum + more * more] += chance * here[more];
            }
          }
        }
      }
      chances = next;
    }
    double chance = 0;
    for (int sum = squares; sum <= all * all; sum++) {
      chance += chances[all][sum];
    }
    return chance > 1 - ROUNDING ? 1 : chance;
  }

  private static double[] binomial(int n, double share) {
    double[] chances = new double[n + 1];
    if (share == 1) {
      chances[n] = 1;
      return chances;
    }
    chances[0] = StrictMath.pow(1 - share, n);
    for (int k = 1; k <= n; k++) {
      chances[k] = chances[k - 1] * (n - k + 1) / k * share / (1 - share);
    }
    return chances;
  }
}
