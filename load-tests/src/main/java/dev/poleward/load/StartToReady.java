package dev.poleward.load;

import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.Spread;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.node.FilledNode;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.load.training.ClubHistory;
import dev.poleward.load.training.Sending;
import dev.poleward.load.wire.ClubClient;
import java.io.IOException;
import java.time.Instant;

/**
 * How long from the start of the process until {@code /health/ready} answers 200: on an empty
 * folder, on one with events after an orderly stop, and after a kill in the midst of writes.
 */
public final class StartToReady {

  private static final int WRITES_BEFORE_KILL = 200;
  private static final double NANOS_PER_MILLI = 1e6;

  private final int repetitions;
  private final ScratchFolder scratch;
  private final Report report;

  private StartToReady(int repetitions, ScratchFolder scratch, Report report) {
    this.repetitions = repetitions;
    this.scratch = scratch;
    this.report = report;
  }

  public static void main(String[] args) throws IOException {
    Arguments arguments = new Arguments(args);
    int repetitions = arguments.whole("repetitions", 5, 1);
    int events = arguments.whole("events", 100_000, 0);
    int clubs = arguments.whole("clubs", 20, 1);
    TimeLimit.set(arguments.limit(30));
    boolean keep = arguments.keep();
    String settings = arguments.settings();
    try (ScratchFolder scratch = new ScratchFolder("start-to-ready", keep)) {
      Report report =
          new Report("StartToReady", settings, "start", "median ms", "min ms", "max ms");
      StartToReady program = new StartToReady(repetitions, scratch, report);
      program.settle();
      program.cold();
      program.warmAndKilled(events, clubs);
      report.print();
      scratch.wentWell();
    }
  }

  /** A start that counts for nothing: it may build, and leaves behind what later starts use. */
  private void settle() throws IOException {
    try (Node node = Node.start(scratch.resolve("settling"))) {
      Report.note("first start, not counted: %d ms", node.awaitReady().toMillis());
    }
  }

  private void cold() throws IOException {
    Spread spread = new Spread();
    for (int i = 0; i < repetitions; i++) {
      try (Node node = Node.start(scratch.resolve("cold-" + i))) {
        spread.add(ready(node));
      }
    }
    row("cold, no data", spread);
  }

  private void warmAndKilled(int events, int clubs) throws IOException {
    try (Node node = Node.start(scratch.resolve("warm"))) {
      node.awaitReady();
      FilledNode filled = FilledNode.fill(node, events, clubs);
      Spread warm = new Spread();
      for (int i = 0; i < repetitions; i++) {
        node.stop();
        node.startAgain();
        warm.add(ready(node));
      }
      row("warm, after SIGTERM", warm);
      Spread killed = new Spread();
      String club = filled.accessKeys().keySet().iterator().next();
      for (int i = 0; i < repetitions; i++) {
        write(filled, club, i);
        node.kill();
        node.startAgain();
        killed.add(ready(node));
      }
      row("warm, after SIGKILL", killed);
    }
  }

  /** Something young, so that the kill meets what is not yet in files of the row store. */
  private static void write(FilledNode filled, String club, int round) throws IOException {
    ClubHistory history =
        new ClubHistory(Instant.now().toEpochMilli() + round, ClubHistory.Shape.USUAL);
    try (ClubClient client = filled.client(club)) {
      for (Sending event : history.next(WRITES_BEFORE_KILL)) {
        client.send(event.body()).orThrow();
      }
    }
  }

  private static double ready(Node node) {
    double millis = node.awaitReady().toNanos() / NANOS_PER_MILLI;
    Report.note("ready after %.0f ms", millis);
    return millis;
  }

  private void row(String start, Spread spread) {
    report.row(
        start,
        "%.0f".formatted(spread.median()),
        "%.0f".formatted(spread.min()),
        "%.0f".formatted(spread.max()));
  }
}
