package dev.poleward.load;

import dev.poleward.domain.mastery.LimitMethod;
import dev.poleward.domain.mastery.MasteryCurve;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.mastery.Success;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.skill.AngleGrid;
import dev.poleward.load.skill.ConstantDog;
import dev.poleward.load.skill.Coverage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * How often 95% limits of the threshold hold the truth, over simulated dogs of constant skill: of
 * 60 to 600 reps, dull to steep curves, thresholds in the midst of the angles tried and near their
 * end.
 */
public final class ThresholdCoverage {

  private static final List<Double> SLOPES = List.of(-.03, -.06, -.12, -.25);

  private final int dogs;
  private final int repsMin;
  private final int repsMax;
  private final int marginDegrees;
  private final long seed;
  private final double level;
  private final Report report;

  private ThresholdCoverage(Arguments arguments) {
    dogs = arguments.whole("dogs", 2_000, 1);
    repsMin = arguments.whole("repsMin", 60, 1);
    repsMax = arguments.whole("repsMax", 600, repsMin);
    marginDegrees = arguments.whole("marginDegrees", 15, -30);
    level = arguments.whole("levelPercent", 80, 1) / 100.0;
    seed = arguments.whole("seed", 1, 0);
    TimeLimit.set(arguments.limit(10));
    report =
        new Report(
            "ThresholdCoverage",
            arguments.settings(),
            "limits",
            "half-life",
            "dogs",
            "how many",
            "held, of all",
            "truth below",
            "truth above",
            "held, of those with both limits",
            "no threshold",
            "no lower limit",
            "no upper limit");
  }

  public static void main(String[] args) {
    ThresholdCoverage program = new ThresholdCoverage(new Arguments(args));
    for (LimitMethod method : LimitMethod.values()) {
      program.measure(method, null);
    }
    program.measure(LimitMethod.PROFILE, MasteryQuestion.DEFAULT_HALF_LIFE_DAYS);
    program.report.print();
  }

  /** The same dogs with the same records, whatever the method and the half-life. */
  private void measure(LimitMethod method, @Nullable Double halfLifeDays) {
    MasteryQuestion question =
        new MasteryQuestion(
            null, level, halfLifeDays, method, Success.ENTRY, null, null, null, null);
    SplittableRandom random = new SplittableRandom(seed);
    Map<String, Coverage> coverages = new LinkedHashMap<>();
    groups().forEach(group -> coverages.put(group, new Coverage()));
    for (int i = 0; i < dogs; i++) {
      ConstantDog dog = anyDog(random);
      List<PlacedRep> trained = dog.trained(level, random.split());
      MasteryCurve curve = MasteryCurve.of(trained, question, ConstantDog.LAST);
      for (String group : List.of("all", reps(dog.reps()), slope(dog.slope()), grid(dog.grid()))) {
        coverages
            .computeIfAbsent(group, _ -> new Coverage())
            .count(curve.sides().getFirst().threshold(), dog.threshold());
      }
    }
    coverages.values().removeIf(coverage -> coverage.dogs() == 0);
    coverages.forEach((group, coverage) -> row(method, halfLifeDays, group, coverage));
  }

  /** In the order in which they are shown. */
  private static List<String> groups() {
    List<String> groups = new ArrayList<>(List.of("all", reps(1), reps(60), reps(150), reps(400)));
    SLOPES.forEach(slope -> groups.add(slope(slope)));
    for (AngleGrid grid : AngleGrid.values()) {
      groups.add(grid(grid));
    }
    return groups;
  }

  private ConstantDog anyDog(SplittableRandom random) {
    AngleGrid grid = AngleGrid.values()[random.nextInt(AngleGrid.values().length)];
    return new ConstantDog(
        random.nextDouble(marginDegrees, grid.greatest() - marginDegrees),
        SLOPES.get(random.nextInt(SLOPES.size())),
        grid,
        random.nextInt(repsMin, repsMax + 1));
  }

  private static String reps(int reps) {
    if (reps < 60) {
      return "up to 59 reps";
    }
    if (reps < 150) {
      return "60 to 149 reps";
    }
    return reps < 400 ? "150 to 399 reps" : "400 to 600 reps";
  }

  private static String slope(double slope) {
    return "slope %.2f a degree".formatted(slope);
  }

  private static String grid(AngleGrid grid) {
    return "%d angles to %.0f°".formatted(grid.angles(), grid.greatest());
  }

  private void row(
      LimitMethod method, @Nullable Double halfLifeDays, String group, Coverage coverage) {
    report.row(
        method.name().toLowerCase(Locale.ROOT),
        halfLifeDays == null ? "none" : "%.0f days".formatted(halfLifeDays),
        group,
        coverage.dogs(),
        coverage.heldOfAll(),
        coverage.below(),
        coverage.above(),
        coverage.heldByBothLimits(),
        coverage.unestimatedOfAll(),
        coverage.lackingLower(),
        coverage.lackingUpper());
  }
}
