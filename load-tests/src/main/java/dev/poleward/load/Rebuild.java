package dev.poleward.load;

import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.node.FilledNode;
import dev.poleward.load.node.Memory;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.load.training.ClubHistory;
import dev.poleward.load.wire.ClubClient;
import java.io.IOException;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How fast all rows are made anew from the journal, and how much memory the service takes with that
 * many events. The digests of some clubs must be the same before and after.
 *
 * <p>The events are written into the journal directly, in the service's own form.
 */
public final class Rebuild {

  private static final int CLUBS_LOOKED_AT = 5;

  private final Node node;
  private final FilledNode filled;
  private final int events;
  private final Report report;

  private Rebuild(Node node, FilledNode filled, int events, Report report) {
    this.node = node;
    this.filled = filled;
    this.events = events;
    this.report = report;
  }

  public static void main(String[] args) throws IOException {
    Arguments arguments = new Arguments(args);
    int events = arguments.whole("events", 1_000_000, 1);
    int clubs = arguments.whole("clubs", 200, 1);
    int repetitions = arguments.whole("repetitions", 3, 1);
    TimeLimit.set(arguments.limit(60));
    boolean keep = arguments.keep();
    String settings = arguments.settings();
    try (ScratchFolder scratch = new ScratchFolder("rebuild", keep);
        Node node = Node.start(scratch.resolve("data"))) {
      Report report =
          new Report(
              "Rebuild",
              settings,
              "start",
              "ready s",
              "events/s",
              "events/s, less a start with rows",
              "MiB once ready (most)",
              "MiB after reads (most)");
      node.awaitReady();
      FilledNode filled = FilledNode.fill(node, events, clubs);
      Rebuild program = new Rebuild(node, filled, events, report);
      Map<String, String> before = program.digests();
      Duration withRows = program.startWithRows();
      for (int i = 0; i < repetitions; i++) {
        program.rebuild(withRows);
        Map<String, String> after = program.digests();
        if (!after.equals(before)) {
          throw new IllegalStateException("digests were " + before + ", are " + after);
        }
      }
      report.print();
      scratch.wentWell();
    }
  }

  private Map<String, String> digests() throws IOException {
    Map<String, String> digests = new HashMap<>();
    List<String> clubs = filled.accessKeys().keySet().stream().limit(CLUBS_LOOKED_AT).toList();
    for (String club : clubs) {
      try (ClubClient client = filled.client(club)) {
        digests.put(club, client.digest());
      }
    }
    return digests;
  }

  private Duration startWithRows() throws IOException {
    node.stop();
    node.startAgain();
    Duration ready = node.awaitReady();
    Memory once = node.memory();
    read();
    report.row("with rows", "%.2f".formatted(ready.toNanos() / 1e9), "", "", once, node.memory());
    return ready;
  }

  private void rebuild(Duration withRows) throws IOException {
    node.stop();
    ScratchFolder.delete(node.data().resolve("rows"));
    node.startAgain();
    Duration ready = node.awaitReady();
    Memory once = node.memory();
    read();
    double seconds = ready.toNanos() / 1e9;
    report.row(
        "without rows",
        "%.2f".formatted(seconds),
        "%.0f".formatted(events / seconds),
        "%.0f".formatted(events / (seconds - withRows.toNanos() / 1e9)),
        once,
        node.memory());
  }

  /** What apps read all day: a page of the feed, sessions, dogs and their reps, in every club. */
  private void read() throws IOException {
    for (String club : filled.accessKeys().keySet()) {
      try (ClubClient client = filled.client(club)) {
        client.get("/events?limit=100").orThrow();
        client.get("/sessions?limit=100").orThrow();
        for (int dog = 0; dog < ClubHistory.Shape.USUAL.dogs(); dog++) {
          client.get("/dogs/" + ClubHistory.dogName(dog) + "/reps?limit=1000").orThrow();
        }
      }
    }
  }
}
