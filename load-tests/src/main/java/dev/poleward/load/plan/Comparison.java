package dev.poleward.load.plan;

import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Programme;
import dev.poleward.load.figures.Report;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/** The same dogs by both trainers. */
public final class Comparison {

  private final List<Schooling> fixed = new ArrayList<>();
  private final List<Schooling> planned = new ArrayList<>();

  /** Takes so many dogs through. */
  public static Comparison of(int dogs, long seed, int repsOfSession) {
    Comparison comparison = new Comparison();
    Programme programme = DefaultProgramme.programme();
    for (int dog = 0; dog < dogs; dog++) {
      Temper temper = Population.CLUB.draw(new SplittableRandom(seed * 1_000_003 + dog));
      comparison.fixed.add(Schooling.of(temper, programme, dog, new FixedOrder(), repsOfSession));
      comparison.planned.add(Schooling.of(temper, programme, dog, new ByPlan(), repsOfSession));
    }
    return comparison;
  }

  public void print(String settings) {
    Report report =
        new Report(
            "PlansAgainstFixedOrder",
            settings,
            "trainer",
            "dogs",
            "finished",
            "reps 10%",
            "50%",
            "90%",
            "weeks 10%",
            "50%",
            "90%",
            "clean",
            "mean");
    row(report, "fixed order", fixed);
    row(report, "planner", planned);
    report.print();
  }

  private static void row(Report report, String trainer, List<Schooling> all) {
    report.row(
        trainer,
        all.size(),
        all.stream().filter(Schooling::finished).count(),
        quantile(all, Schooling::reps, 0.1),
        quantile(all, Schooling::reps, 0.5),
        quantile(all, Schooling::reps, 0.9),
        quantile(all, Schooling::weeks, 0.1),
        quantile(all, Schooling::weeks, 0.5),
        quantile(all, Schooling::weeks, 0.9),
        all.stream().mapToDouble(s -> s.clean() / (double) s.reps()).average().orElse(0),
        all.stream().mapToDouble(Schooling::reps).average().orElse(0));
  }

  private static double quantile(
      List<Schooling> all, ToDoubleFunction<Schooling> of, double share) {
    double[] sorted = all.stream().mapToDouble(of).sorted().toArray();
    return sorted[(int) (share * (sorted.length - 1))];
  }
}
