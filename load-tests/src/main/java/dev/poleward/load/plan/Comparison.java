package dev.poleward.load.plan;

import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Programme;
import dev.poleward.load.figures.Report;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** The same dogs by both trainers. */
public final class Comparison {

  private static final int FIFTHS = 5;

  private final List<Schooling> fixed = new ArrayList<>();
  private final List<Schooling> planned = new ArrayList<>();
  private final List<Map<Spent, Integer>> spent = new ArrayList<>();

  /** Takes so many dogs through. */
  public static Comparison of(int dogs, long seed, int repsOfSession) {
    Comparison comparison = new Comparison();
    Programme programme = DefaultProgramme.programme();
    for (int dog = 0; dog < dogs; dog++) {
      Temper temper = Population.CLUB.draw(new SplittableRandom(seed * 1_000_003 + dog));
      comparison.fixed.add(Schooling.of(temper, programme, dog, new FixedOrder(), repsOfSession));
      ByPlan byPlan = new ByPlan();
      comparison.planned.add(Schooling.of(temper, programme, dog, byPlan, repsOfSession));
      comparison.spent.add(byPlan.spent());
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
            "mean",
            "true chance at the end",
            "when a rung was passed",
            "passed too soon");
    row(report, "fixed order", fixed);
    row(report, "planner", planned);
    row(report, "fixed order, dogs through by both", ofDogsThroughByBoth(fixed));
    row(report, "planner, dogs through by both", ofDogsThroughByBoth(planned));
    report.print();
    printFifths(settings);
  }

  /** Who is given up after years weighs heavily, and says nothing of the others. */
  private List<Schooling> ofDogsThroughByBoth(List<Schooling> all) {
    return IntStream.range(0, all.size())
        .filter(dog -> fixed.get(dog).finished() && planned.get(dog).finished())
        .mapToObj(all::get)
        .toList();
  }

  /** Where the reps of plans go, by how well the fixed order serves a dog. */
  private void printFifths(String settings) {
    List<String> columns = new ArrayList<>(List.of("fifth", "fixed order", "by plan", "change"));
    for (Spent each : Spent.values()) {
      columns.add(each.words());
    }
    Report report = new Report("PlansAgainstFixedOrder", settings, columns.toArray(String[]::new));
    List<Integer> order =
        IntStream.range(0, fixed.size())
            .boxed()
            .sorted(Comparator.comparingInt(dog -> fixed.get(dog).reps()))
            .toList();
    for (int fifth = 0; fifth < FIFTHS; fifth++) {
      List<Integer> dogs =
          order.subList(fifth * order.size() / FIFTHS, (fifth + 1) * order.size() / FIFTHS);
      if (!dogs.isEmpty()) {
        report.row(fifth(fifth, dogs).toArray());
      }
    }
    report.print();
  }

  private List<Object> fifth(int fifth, List<Integer> dogs) {
    double inOrder = mean(dogs, dog -> fixed.get(dog).reps());
    double byPlan = mean(dogs, dog -> planned.get(dog).reps());
    List<Object> row = new ArrayList<>(List.of(fifth + 1, inOrder, byPlan, byPlan / inOrder - 1));
    for (Spent each : Spent.values()) {
      row.add(mean(dogs, dog -> spent.get(dog).getOrDefault(each, 0)));
    }
    return row;
  }

  private static double mean(List<Integer> dogs, ToDoubleFunction<Integer> of) {
    return dogs.stream().mapToDouble(of).average().orElse(0);
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
        all.stream().mapToDouble(Schooling::reps).average().orElse(0),
        all.stream().mapToDouble(Schooling::atEnd).average().orElse(0),
        whenPassed(all).average().orElse(0),
        whenPassed(all).map(chance -> chance < Passed.NOT_YET ? 1 : 0).average().orElse(0));
  }

  private static DoubleStream whenPassed(List<Schooling> all) {
    return all.stream().flatMap(dog -> dog.whenPassed().stream()).mapToDouble(chance -> chance);
  }

  private static double quantile(
      List<Schooling> all, ToDoubleFunction<Schooling> of, double share) {
    double[] sorted = all.stream().mapToDouble(of).sorted().toArray();
    return sorted[(int) (share * (sorted.length - 1))];
  }
}
