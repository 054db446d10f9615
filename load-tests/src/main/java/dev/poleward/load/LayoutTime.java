package dev.poleward.load;

import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.LayoutQuestion;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Latencies;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.service.render.LayoutPicture;
import dev.poleward.service.render.Studio;
import java.util.SplittableRandom;
import java.util.function.ToIntFunction;

/** How long a layout takes with its moves and its turning table, and its pictures. */
public final class LayoutTime {

  private static final int WIDTH = 800;

  private LayoutTime() {}

  /** Measures. */
  public static void main(String[] args) {
    Arguments arguments = new Arguments(args);
    int warmUps = arguments.whole("warmUps", 2_000, 1);
    int repetitions = arguments.whole("repetitions", 2_000, 1);
    TimeLimit.set(arguments.limit(10));
    Report report =
        new Report(
            "LayoutTime",
            arguments.settings(),
            "what",
            "first ms",
            "p50 ms",
            "p99 ms",
            "made in all");
    Studio studio = new Studio();
    measure(
        "layout, pieces",
        question -> Layout.of(question).pieces().all().size(),
        warmUps,
        repetitions,
        report);
    measure(
        "with SVG, bytes",
        question -> studio.svg(LayoutPicture.of(Layout.of(question), WIDTH)).length,
        warmUps,
        repetitions,
        report);
    measure(
        "with PNG, bytes",
        question -> studio.png(LayoutPicture.of(Layout.of(question), WIDTH)).orElseThrow().length,
        Math.max(1, warmUps / 20),
        Math.max(1, repetitions / 20),
        report);
    report.print();
  }

  private static void measure(
      String what,
      ToIntFunction<LayoutQuestion> work,
      int warmUps,
      int repetitions,
      Report report) {
    SplittableRandom random = new SplittableRandom(1);
    long begun = System.nanoTime();
    long made = work.applyAsInt(question(random));
    double first = (System.nanoTime() - begun) / 1e6;
    for (int i = 0; i < warmUps; i++) {
      made += work.applyAsInt(question(random));
    }
    Latencies latencies = new Latencies();
    for (int i = 0; i < repetitions; i++) {
      LayoutQuestion question = question(random);
      long from = System.nanoTime();
      made += work.applyAsInt(question);
      latencies.took(System.nanoTime() - from);
    }
    report.row(
        what, Latencies.millis(first), latencies.percentile(50), latencies.percentile(99), made);
  }

  private static LayoutQuestion question(SplittableRandom random) {
    return new LayoutQuestion(
        setup(random),
        setup(random),
        null,
        new LayoutQuestion.Turning(2 + 8 * random.nextDouble(), 90),
        new LayoutQuestion.Ground(30, 20, 1),
        null,
        LayoutQuestion.TURNING_RADIUS_USUAL,
        LayoutQuestion.CLEARANCE_USUAL,
        LayoutQuestion.JUMP_WIDTH_USUAL,
        null,
        90.0);
  }

  private static Setup setup(SplittableRandom random) {
    return new Setup(
        2 + random.nextInt(23),
        0.6,
        LeadIn.values()[random.nextInt(3)],
        4 + 5 * random.nextDouble(),
        new Approach(new EntryAngle(340 * random.nextDouble() - 170), null),
        null,
        null,
        null);
  }
}
