package dev.poleward.load;

import dev.poleward.domain.judgement.SlipWatch;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.MovingOnRule;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.judgement.BlockWatch;
import dev.poleward.load.judgement.FixedWatch;
import dev.poleward.load.judgement.RisingWatch;
import dev.poleward.load.judgement.Slipping;
import dev.poleward.load.judgement.Watch;
import dev.poleward.load.judgement.WrongMoves;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * How often the rules for moving on err, per test, per rung and per stage, and how soon a slip is
 * found against fixed watches with as many false alarms, over simulated dogs of constant shares.
 */
public final class ErrorRates {

  private static final int RUNGS_OF_STAGE = 12;

  /** Misses of a solid dog. */
  private static final double SOLID = 0.1;

  /** Misses that the watch is for: the usual one's. */
  private static final double AIMED_AT = 0.2;

  private final int dogs;
  private final long seed;
  private final String settings;

  private ErrorRates(Arguments arguments) {
    dogs = arguments.whole("dogs", 20_000, RUNGS_OF_STAGE);
    seed = arguments.whole("seed", 1, 0);
    TimeLimit.set(arguments.limit(10));
    settings = arguments.settings();
  }

  public static void main(String[] args) {
    ErrorRates program = new ErrorRates(new Arguments(args));
    program.movingOn();
    program.lastHandling();
    program.slipping();
  }

  private void movingOn() {
    Report report =
        new Report(
            "ErrorRates: moving on",
            settings,
            "rule",
            "clean share of the dog",
            "moved on by one test",
            "reps of one test",
            "from a rung within 30 reps",
            "within 60",
            "within 120",
            "from one or more of %d rungs within 60 each".formatted(RUNGS_OF_STAGE));
    rules()
        .forEach(
            (name, rule) -> {
              for (double share : new double[] {.5, .65, .7, .8, .9, .95}) {
                movingOn(report, name, new WrongMoves(rule, share));
              }
            });
    report.print();
  }

  private static Map<String, MovingOnRule> rules() {
    Map<String, MovingOnRule> rules = new LinkedHashMap<>();
    rules.put("of the default programme", ruleOfDefault());
    rules.put("sequential .9/.7, 10%/10%", MovingOnRule.USUAL);
    rules.put("sequential .9/.7, 5%/10%", new MovingOnRule.Sequential(.9, .7, .05, .1, 3, .05));
    rules.put("sequential .9/.7, 1%/10%", new MovingOnRule.Sequential(.9, .7, .01, .1, 3, .05));
    rules.put("8 of 10", new MovingOnRule.KOfN(8, 10, 3, .05));
    rules.put("9 of 10", new MovingOnRule.KOfN(9, 10, 3, .05));
    rules.put("6 in a row", new MovingOnRule.Run(6, 3, .05));
    return rules;
  }

  /** One handling is left until the test is through: what it takes to move on by it. */
  private void lastHandling() {
    double[] shares = {.1, .3, .5, .7, .9};
    Report report =
        new Report(
            "ErrorRates: the last handling",
            settings,
            "rule",
            "moved on by one test, handling by handling, of 0.7",
            "of 0.9",
            "moved on by the last handling, of 0.1, the others of 0.9",
            "of 0.3",
            "of 0.5",
            "of 0.7",
            "of 0.9");
    rules()
        .forEach(
            (name, rule) -> {
              SplittableRandom random = new SplittableRandom(seed);
              List<Object> row = new ArrayList<>();
              row.add(name);
              for (double share : new double[] {.7, .9}) {
                WrongMoves moves = new WrongMoves(rule, share);
                row.add(percent(moves.handlingByHandling(dogs, random.split())));
              }
              WrongMoves others = new WrongMoves(rule, .9);
              for (double late : shares) {
                row.add(percent(others.byTheLastHandling(late, dogs, random.split())));
              }
              report.row(row.toArray());
            });
    report.print();
  }

  private void movingOn(Report report, String name, WrongMoves moves) {
    SplittableRandom random = new SplittableRandom(seed);
    WrongMoves.OneTest one = moves.oneTest(dogs, random.split());
    boolean[] within60 = moves.rungs(dogs, 60, random.split());
    report.row(
        name,
        moves.share(),
        percent(one.movedOn()),
        "%.1f".formatted(one.reps()),
        percent(share(moves.rungs(dogs, 30, random.split()))),
        percent(share(within60)),
        percent(share(moves.rungs(dogs, 120, random.split()))),
        percent(share(stages(within60))));
  }

  /** Whether any rung of a stage was moved on from. */
  private static boolean[] stages(boolean[] rungs) {
    boolean[] stages = new boolean[rungs.length / RUNGS_OF_STAGE];
    for (int stage = 0; stage < stages.length; stage++) {
      for (int rung = 0; rung < RUNGS_OF_STAGE; rung++) {
        stages[stage] |= rungs[stage * RUNGS_OF_STAGE + rung];
      }
    }
    return stages;
  }

  private static double share(boolean[] some) {
    int number = 0;
    for (boolean each : some) {
      number += each ? 1 : 0;
    }
    return (double) number / some.length;
  }

  private void slipping() {
    Report report =
        new Report(
            "ErrorRates: slipping",
            settings,
            "watch",
            "reps between false alarms",
            "slipped to",
            "reps to the alarm",
            "for 9 of 10 dogs",
            "from the first rep on");
    for (int[] fixed : List.of(new int[] {8, 10}, new int[] {7, 10}, new int[] {15, 20})) {
      Supplier<Watch> window = () -> new FixedWatch(fixed[0], fixed[1]);
      double between = Slipping.atOnce(window, SOLID, dogs, seed).mean();
      slipping(report, "%d of %d".formatted(fixed[0], fixed[1]), window, between);
      asOftenWrong(report, between);
    }
    Supplier<Watch> blocks = () -> new BlockWatch(8, 10);
    double between = Slipping.atOnce(blocks, SOLID, dogs, seed).mean();
    slipping(report, "8 of 10, each ten looked at once", blocks, between);
    asOftenWrong(report, between);
    asItIs(report, "usual", SlipWatch.USUAL);
    asItIs(report, "default programme", SlipWatch.after(ruleOfDefault()));
    report.print();
  }

  private static MovingOnRule ruleOfDefault() {
    return DefaultProgramme.programme().inOrder().getFirst().terms().rule();
  }

  private void asItIs(Report report, String name, SlipWatch watch) {
    slipping(
        report,
        "CUSUM, %d a miss, at %d (%s)".formatted(watch.missWorth(), watch.threshold(), name),
        () -> new RisingWatch(watch),
        watch.repsToAlarm(SOLID));
  }

  /**
   * Whole thresholds lie apart. So each dog is watched at one of two that are neighbours, drawn so
   * that false alarms are as far apart on average as was asked.
   */
  private void asOftenWrong(Report report, double between) {
    SlipWatch later = SlipWatch.designed(SOLID, AIMED_AT, between);
    SlipWatch sooner = new SlipWatch(later.missWorth(), later.threshold() - 1);
    double shareOfLater =
        (between - sooner.repsToAlarm(SOLID))
            / (later.repsToAlarm(SOLID) - sooner.repsToAlarm(SOLID));
    SplittableRandom random = new SplittableRandom(seed);
    slipping(
        report,
        "CUSUM, %d a miss, at %d or %d"
            .formatted(later.missWorth(), sooner.threshold(), later.threshold()),
        () -> new RisingWatch(random.nextDouble() < shareOfLater ? later : sooner),
        between);
  }

  private void slipping(Report report, String name, Supplier<Watch> watch, double between) {
    for (double slipped : new double[] {.2, .3, .4, .5, .7}) {
      Slipping after = Slipping.after(50, watch, SOLID, slipped, dogs, seed);
      report.row(
          name,
          "%.0f".formatted(between),
          "%.1f".formatted(1 - slipped),
          "%.1f".formatted(after.mean()),
          after.quantile(.9),
          "%.1f".formatted(Slipping.atOnce(watch, slipped, dogs, seed).mean()));
    }
  }

  private static String percent(double share) {
    return "%.1f%%".formatted(100 * share);
  }
}
