package dev.poleward.load;

import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.CpuUse;
import dev.poleward.load.figures.DiskSync;
import dev.poleward.load.figures.Latencies;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.load.training.RepSender;
import java.io.IOException;
import java.time.Duration;
import java.util.List;

/**
 * One rep a request: how many a second over many connections, and how long each waits until it is
 * on disk and applied. Each connection sends the next when the one before is answered.
 */
public final class SingleReps {

  private SingleReps() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    Arguments arguments = new Arguments(args);
    List<Integer> connections = arguments.wholes("connections", "32,1");
    int clubs = arguments.whole("clubs", 8, 1);
    Duration warmUp = Duration.ofSeconds(arguments.whole("warmUpSeconds", 20, 1));
    Duration measured = Duration.ofSeconds(arguments.whole("seconds", 30, 1));
    TimeLimit.set(arguments.limit(30));
    boolean keep = arguments.keep();
    String settings = arguments.settings();
    try (ScratchFolder scratch = new ScratchFolder("single-reps", keep);
        Node node = Node.start(scratch.resolve("data"))) {
      Report report =
          new Report(
              "SingleReps",
              settings,
              "connections",
              "reps/s",
              "p50 ms",
              "p99 ms",
              "max ms",
              "cores: service + load",
              "disk sync ms");
      node.awaitReady();
      String sync = DiskSync.median(scratch.resolve("sync"));
      for (int each : connections) {
        try (RepSender sender = RepSender.open(node, "reps-" + each + "-", clubs, each, 1)) {
          sender.run(warmUp);
          CpuUse cpu = new CpuUse(node.handle());
          RepSender.Sent sent = sender.run(measured);
          Latencies latencies = sent.latencies();
          report.row(
              each,
              "%.0f".formatted(sent.eventsPerSecond()),
              latencies.percentile(50),
              latencies.percentile(99),
              latencies.max(),
              cpu.cores(),
              sync);
        }
      }
      report.print();
      scratch.wentWell();
    }
  }
}
