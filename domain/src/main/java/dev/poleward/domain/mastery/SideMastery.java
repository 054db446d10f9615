package dev.poleward.domain.mastery;

import dev.poleward.domain.layout.EntrySide;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One entry side of a {@link MasteryCurve}.
 *
 * @param side {@link EntrySide#POLE} or {@link EntrySide#GAP}
 * @param reps how many there were, straight-on ones included
 * @param made how many of them were made
 * @param effectiveReps the sum of their weights
 * @param fit the curve over the size of the angle; null where there are not enough reps for one
 * @param threshold where it passes the level asked for
 * @param points one for each angle, ascending by size
 * @param shapesDisagree whether the isotonic fit tells another story than a falling curve, by more
 *     than chance explains; of one that does not fall {@link Threshold.NoFall} says enough
 */
public record SideMastery(
    EntrySide side,
    int reps,
    int made,
    double effectiveReps,
    @Nullable LogisticFit fit,
    Threshold threshold,
    List<AnglePoint> points,
    boolean shapesDisagree) {

  /** Below this many reps nothing is estimated. */
  public static final int REPS_MIN = 5;

  /** Below this sum of weights nothing is estimated either: no rep is left of the old ones. */
  public static final double EFFECTIVE_REPS_MIN = 1;

  /**
   * What must be left, in weight, away from the angle that has the most: else it is but one angle.
   */
  public static final double ELSEWHERE_MIN = 0.1;

  /** Keeps the points from changing. */
  public SideMastery {
    points = List.copyOf(points);
  }

  static SideMastery of(EntrySide side, List<AngleCell> cells, MasteryQuestion question) {
    int reps = 0;
    int made = 0;
    double weight = 0;
    double heaviest = 0;
    for (AngleCell cell : cells) {
      reps += cell.reps();
      made += cell.made();
      weight += cell.weighted().of();
      heaviest = Math.max(heaviest, cell.weighted().of());
    }
    double[] isotonic = isotonic(cells);
    if (reps < REPS_MIN
        || cells.size() < 2
        || weight < EFFECTIVE_REPS_MIN
        || weight - heaviest < ELSEWHERE_MIN) {
      return new SideMastery(
          side,
          reps,
          made,
          weight,
          null,
          new Threshold.NotEnoughReps(),
          points(cells, null, isotonic),
          false);
    }
    Trials trials = trials(cells);
    LogisticFit fit = FirthLogistic.fit(trials);
    return new SideMastery(
        side,
        reps,
        made,
        weight,
        fit,
        Threshold.of(trials, fit, question.level(), question.limits()),
        points(cells, fit, isotonic),
        fit.slope() < 0 && ShapeCheck.disagree(trials, fit, isotonic));
  }

  private static double[] isotonic(List<AngleCell> cells) {
    double[] shares = cells.stream().mapToDouble(cell -> cell.weighted().share()).toArray();
    double[] weights = cells.stream().mapToDouble(cell -> cell.weighted().of()).toArray();
    return IsotonicFit.decreasing(shares, weights);
  }

  private static Trials trials(List<AngleCell> cells) {
    return new Trials(
        cells.stream().mapToDouble(cell -> cell.angle().size()).toArray(),
        cells.stream().mapToDouble(cell -> cell.weighted().made()).toArray(),
        cells.stream().mapToDouble(cell -> cell.weighted().missed()).toArray());
  }

  private static List<AnglePoint> points(
      List<AngleCell> cells, @Nullable LogisticFit fit, double[] isotonic) {
    List<AnglePoint> points = new ArrayList<>(cells.size());
    for (int i = 0; i < isotonic.length; i++) {
      AngleCell cell = cells.get(i);
      points.add(
          new AnglePoint(
              cell.angle(),
              cell.reps(),
              cell.made(),
              cell.weighted().of(),
              fit == null ? null : fit.bandAt(cell.angle().size()),
              cell.weighted().wilson(Confidence.OF_95_PERCENT),
              isotonic[i]));
    }
    return points;
  }
}
