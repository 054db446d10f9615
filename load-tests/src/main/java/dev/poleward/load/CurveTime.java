package dev.poleward.load;

import dev.poleward.domain.mastery.LimitMethod;
import dev.poleward.domain.mastery.MasteryCurve;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.mastery.Success;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Latencies;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.skill.AngleGrid;
import dev.poleward.load.skill.ConstantDog;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** How long a curve takes, from placed reps to thresholds with limits, without any service. */
public final class CurveTime {

  private CurveTime() {}

  public static void main(String[] args) {
    Arguments arguments = new Arguments(args);
    int reps = arguments.whole("reps", 5_000, 1);
    int warmUps = arguments.whole("warmUps", 3_000, 1);
    int repetitions = arguments.whole("repetitions", 1_000, 1);
    TimeLimit.set(arguments.limit(10));
    Report report =
        new Report(
            "CurveTime",
            arguments.settings(),
            "limits",
            "first ms",
            "p50 ms",
            "p99 ms",
            "max ms",
            "threshold");
    List<PlacedRep> trained =
        new ConstantDog(55, -.06, AngleGrid.EVERY_5_TO_90, reps)
            .trained(MasteryQuestion.DEFAULT_LEVEL, new SplittableRandom(1));
    for (LimitMethod method : LimitMethod.values()) {
      measure(trained, method, warmUps, repetitions, report);
    }
    report.print();
  }

  private static void measure(
      List<PlacedRep> trained, LimitMethod method, int warmUps, int repetitions, Report report) {
    MasteryQuestion question =
        new MasteryQuestion(
            null,
            MasteryQuestion.DEFAULT_LEVEL,
            MasteryQuestion.DEFAULT_HALF_LIFE_DAYS,
            method,
            Success.ENTRY,
            null,
            null,
            null,
            null);
    long begun = System.nanoTime();
    MasteryCurve curve = MasteryCurve.of(trained, question, ConstantDog.LAST);
    long first = System.nanoTime() - begun;
    for (int i = 0; i < warmUps; i++) {
      curve = MasteryCurve.of(trained, question, ConstantDog.LAST);
    }
    Latencies latencies = new Latencies();
    for (int i = 0; i < repetitions; i++) {
      begun = System.nanoTime();
      curve = MasteryCurve.of(trained, question, ConstantDog.LAST);
      latencies.took(System.nanoTime() - begun);
    }
    report.row(
        method.name().toLowerCase(Locale.ROOT),
        Latencies.millis(first / 1e6),
        latencies.percentile(50),
        latencies.percentile(99),
        latencies.max(),
        curve.sides().getFirst().threshold());
  }
}
