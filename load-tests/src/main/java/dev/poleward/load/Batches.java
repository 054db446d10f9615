package dev.poleward.load;

import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.CpuUse;
import dev.poleward.load.figures.DiskSync;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.Spread;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.kafka.RawProducer;
import dev.poleward.load.kafka.RawProducer.Batching;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.load.training.RepSender;
import java.io.IOException;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;

/**
 * Reps in batches over several connections, against a bare producer into the same broker process:
 * what part of what Kafka takes does the service take, with all that it judges, applies and
 * answers.
 */
public final class Batches {

  private Batches() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    Arguments arguments = new Arguments(args);
    int connections = arguments.whole("connections", 4, 1);
    int clubs = arguments.whole("clubs", 4, 1);
    int batch = arguments.whole("batch", 500, 2);
    int rounds = arguments.whole("rounds", 3, 1);
    Duration warmUp = Duration.ofSeconds(arguments.whole("warmUpSeconds", 20, 1));
    Duration measured = Duration.ofSeconds(arguments.whole("seconds", 10, 1));
    TimeLimit.set(arguments.limit(30));
    boolean keep = arguments.keep();
    String settings = arguments.settings();
    try (ScratchFolder scratch = new ScratchFolder("batches", keep);
        Node node = Node.start(scratch.resolve("data"))) {
      Report report =
          new Report(
              "Batches",
              settings,
              "what",
              "events/s: median",
              "min",
              "max",
              "p99 ms of a batch",
              "service by this",
              "disk sync ms");
      node.awaitReady();
      String sync = DiskSync.median(scratch.resolve("sync"));
      try (RepSender sender = RepSender.open(node, "batches-", clubs, connections, batch);
          RawProducer raw = new RawProducer(node.kafka())) {
        sender.run(warmUp);
        raw.perSecond(Batching.DEFAULTS, warmUp.dividedBy(4));
        Spread service = new Spread();
        Map<Batching, Spread> bare = new EnumMap<>(Batching.class);
        String slow = "";
        for (int i = 0; i < rounds; i++) {
          CpuUse cpu = new CpuUse(node.handle());
          RepSender.Sent sent = sender.run(measured);
          Report.note("service: %.0f events/s, cores: %s", sent.eventsPerSecond(), cpu.cores());
          service.add(sent.eventsPerSecond());
          slow = sent.latencies().percentile(99);
          for (Batching each : Batching.values()) {
            double perSecond = raw.perSecond(each, measured);
            Report.note("%s: %.0f records/s", each, perSecond);
            bare.computeIfAbsent(each, _ -> new Spread()).add(perSecond);
          }
        }
        row(report, "service", service, slow, "1", sync);
        bare.forEach(
            (batching, spread) ->
                row(
                    report,
                    "raw, " + batching,
                    spread,
                    "",
                    "%.2f".formatted(service.median() / spread.median()),
                    sync));
      }
      report.print();
      scratch.wentWell();
    }
  }

  private static void row(
      Report report, String what, Spread spread, String slow, String ratio, String sync) {
    report.row(
        what,
        "%.0f".formatted(spread.median()),
        "%.0f".formatted(spread.min()),
        "%.0f".formatted(spread.max()),
        slow,
        ratio,
        sync);
  }
}
