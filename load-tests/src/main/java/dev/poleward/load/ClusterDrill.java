package dev.poleward.load;

import dev.poleward.load.drill.Faults;
import dev.poleward.load.drill.TwoNodes;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.kafka.KafkaCluster;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.load.node.SharedKeys;
import java.io.IOException;
import java.util.List;

/**
 * Three Kafka brokers and two nodes of the service on this machine: what is written through one
 * node is seen through the other at once, and the loss of one of each loses nothing.
 */
public final class ClusterDrill {

  private ClusterDrill() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    Arguments arguments = new Arguments(args);
    int events = arguments.whole("events", 1_000, 1);
    boolean together = arguments.oneOf("nodes", "together", "one-by-one").equals("together");
    TimeLimit.set(arguments.limit(20));
    boolean keep = arguments.keep();
    String settings = arguments.settings();
    Faults faults = new Faults();
    try (ScratchFolder scratch = new ScratchFolder("cluster-drill", keep);
        KafkaCluster cluster = KafkaCluster.start(scratch)) {
      Report report = new Report("ClusterDrill", settings, "what", "figures", "result");
      SharedKeys keys = SharedKeys.make(scratch.resolve("keys"));
      List<String> options = keys.options(cluster.bootstrap());
      try (Node a = Node.startOnCluster(scratch.resolve("node-a"), options)) {
        if (!together) {
          a.awaitReady();
        }
        try (Node b = Node.startOnCluster(scratch.resolve("node-b"), options)) {
          a.awaitReady();
          b.awaitReady();
          TwoNodes nodes = TwoNodes.of(cluster, a, b, keys, faults, report);
          nodes.readOwnWrites(events);
          nodes.keys();
          nodes.same();
          nodes.loseNode();
          nodes.loseBroker();
        }
      }
      report.print();
      if (faults.isEmpty()) {
        scratch.wentWell();
      }
    }
    faults.endProgram();
  }
}
