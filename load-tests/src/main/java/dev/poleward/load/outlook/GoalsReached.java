package dev.poleward.load.outlook;

import java.util.List;
import java.util.stream.IntStream;

/** Of goals that were told about the same chance, how many were reached. For one thread. */
public final class GoalsReached {

  /** Chances that are taken together, each from one of these to below the next; the last to 1. */
  private static final double[] FROM = {0, 0.05, 0.2, 0.4, 0.6, 0.8, 0.95, Double.MAX_VALUE};

  /**
   * Goals of about the same chance.
   *
   * @param from the least chance among them
   * @param to the chance that none of them has, or 1
   * @param goals how many
   * @param told what they were told on average
   * @param reached the share that was reached
   */
  public record Group(double from, double to, int goals, double told, double reached) {}

  private final int[] goals = new int[FROM.length - 1];
  private final double[] told = new double[goals.length];
  private final int[] reached = new int[goals.length];
  private int all;
  private double squares;

  /** A goal, what it was told, and what came of it. */
  void add(double chance, boolean isReached) {
    int group = 0;
    while (chance >= FROM[group + 1]) {
      group++;
    }
    goals[group]++;
    told[group] += chance;
    reached[group] += isReached ? 1 : 0;
    double off = chance - (isReached ? 1 : 0);
    squares += off * off;
    all++;
  }

  /** The goals by what they were told, the least chance first. */
  public List<Group> groups() {
    return IntStream.range(0, goals.length)
        .filter(each -> goals[each] > 0)
        .mapToObj(
            each ->
                new Group(
                    FROM[each],
                    Math.min(1, FROM[each + 1]),
                    goals[each],
                    told[each] / goals[each],
                    (double) reached[each] / goals[each]))
        .toList();
  }

  /** The mean square of how far what was told lay from what came (Brier 1950), 0 to 1. */
  public double brier() {
    return squares / all;
  }
}
