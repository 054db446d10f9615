package dev.poleward.load;

import dev.poleward.domain.running.RunningOrder;
import dev.poleward.domain.running.RunningOrders;
import dev.poleward.domain.running.RunningQuestion;
import dev.poleward.domain.running.SwungPoles;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Latencies;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.running.DrawnClass;

/**
 * How long running orders of classes of several sizes take, and how near they come to the least.
 */
public final class RunningOrderTime {

  private RunningOrderTime() {}

  public static void main(String[] args) {
    Arguments arguments = new Arguments(args);
    int classes = arguments.whole("classes", 100, 1);
    int warmUps = arguments.whole("warmUps", 20, 0);
    TimeLimit.set(arguments.limit(20));
    Report report =
        new Report(
            "RunningOrderTime",
            arguments.settings(),
            "class",
            "p50 ms",
            "max ms",
            "least metres",
            "worst gap",
            "least waits",
            "of naive metres",
            "of naive waits",
            "left out");
    for (DrawnClass drawn : DrawnClass.KINDS) {
      measure(drawn, warmUps, classes, report);
    }
    report.print();
  }

  private static void measure(DrawnClass drawn, int warmUps, int classes, Report report) {
    for (int i = 0; i < warmUps; i++) {
      RunningOrders.of(drawn.question(-1 - i), new SwungPoles());
    }
    Latencies latencies = new Latencies();
    Tally tally = new Tally();
    for (int i = 0; i < classes; i++) {
      RunningQuestion question = drawn.question(i);
      long begun = System.nanoTime();
      RunningOrder order = RunningOrders.of(question, new SwungPoles());
      latencies.took(System.nanoTime() - begun);
      tally.count(order);
    }
    report.row(
        drawn.name(),
        latencies.percentile(50),
        latencies.max(),
        "%d of %d".formatted(tally.leastMetres, classes),
        "%.1f%%".formatted(100 * tally.worstGap),
        "%d of %d".formatted(tally.leastWaits, classes),
        "%.0f%%".formatted(100 * tally.metres / tally.naiveMetres),
        "%.0f%%".formatted(100 * tally.share()),
        "%.1f turns".formatted((double) tally.leftOut / classes));
  }

  private static final class Tally {
    private int leastMetres;
    private int leastWaits;
    private double worstGap;
    private double metres;
    private double naiveMetres;
    private double waits;
    private double naiveWaits;
    private int leftOut;

    private double share() {
      return naiveWaits == 0 ? 0 : waits / naiveWaits;
    }

    private void count(RunningOrder order) {
      leastMetres += order.carried().isLeast() ? 1 : 0;
      leastWaits += order.waited().isLeast() ? 1 : 0;
      worstGap = Math.max(worstGap, order.carried().amount() / order.carried().atLeast() - 1);
      metres += order.carried().amount();
      naiveMetres += order.naive().metres();
      waits += order.waited().amount();
      naiveWaits += order.naive().waited();
      leftOut += order.leftOut().size();
    }
  }
}
