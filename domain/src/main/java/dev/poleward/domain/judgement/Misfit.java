package dev.poleward.domain.judgement;

import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.programme.Handling;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.HypergeometricDistribution;

/**
 * A handling that lags the rest of its rung, so that what is said of all of them together is not
 * true of it.
 *
 * @param own reps with the handling
 * @param others reps of the rung with any other
 * @param chance of as few clean ones, were all handlings alike
 */
public record Misfit(Handling handling, Proportion own, Proportion others, double chance) {

  /** So many of the last reps with a handling are looked at: what was hard once may be no more. */
  public static final int REPS_EACH_MAX = 20;

  /**
   * The handlings that lag: those whose chance, times the number of handlings, is at most the share
   * of wrong flags (Bonferroni). So of rungs where all handlings are alike, at most that share has
   * any flag at one look.
   *
   * @param listed the rung's handlings; reps with others are not looked at
   * @param reps ascending in time
   * @param wrong share of rungs that may be flagged though all is well, above 0 and below 0.5
   */
  public static List<Misfit> among(List<Handling> listed, List<HandledRep> reps, double wrong) {
    List<HandledRep> lately =
        listed.stream().flatMap(handling -> lately(handling, reps).stream()).toList();
    List<Misfit> lagging = new ArrayList<>();
    for (Handling handling : listed) {
      List<HandledRep> own = new ArrayList<>();
      List<HandledRep> others = new ArrayList<>();
      lately.forEach(rep -> (rep.handling().equals(handling) ? own : others).add(rep));
      double chance = chance(missed(own), own.size(), missed(lately), lately.size());
      if (chance * listed.size() <= wrong) {
        lagging.add(new Misfit(handling, proportion(own), proportion(others), chance));
      }
    }
    return List.copyOf(lagging);
  }

  /**
   * The chance that of so many drawn from all at least so many were missed: Fisher's exact test,
   * one-sided (Fisher 1935, JRSS 98:39).
   */
  static double chance(int missed, int of, int missedOfAll, int all) {
    return missed == 0
        ? 1
        : HypergeometricDistribution.of(all, missedOfAll, of).survivalProbability(missed - 1);
  }

  private static List<HandledRep> lately(Handling handling, List<HandledRep> reps) {
    List<HandledRep> own = reps.stream().filter(rep -> rep.handling().equals(handling)).toList();
    return own.subList(Math.max(0, own.size() - REPS_EACH_MAX), own.size());
  }

  private static int missed(List<HandledRep> reps) {
    return (int) reps.stream().filter(rep -> !rep.clean()).count();
  }

  private static Proportion proportion(List<HandledRep> reps) {
    return new Proportion(reps.size() - missed(reps), missed(reps));
  }
}
