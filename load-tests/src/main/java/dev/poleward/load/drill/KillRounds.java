package dev.poleward.load.drill;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.load.figures.Report;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.load.wire.ClubClient;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Rounds of writing and killing, with a look at everything after each. For one thread. */
public final class KillRounds {

  private static final String CLUB = "saltmarsh";
  private static final int KILL_AFTER_MILLIS_MAX = 1_500;

  /**
   * How hard.
   *
   * @param singles writers that send one event a request
   * @param batches writers that send several
   * @param batch how many those send
   * @param answersFirst whether the kill waits until each writer got an answer
   * @param readyMillisMax longest time to ready that is no fault
   */
  public record Plan(
      int rounds,
      int singles,
      int batches,
      int batch,
      boolean answersFirst,
      int readyMillisMax,
      long seed) {}

  private final Plan plan;
  private final ScratchFolder scratch;
  private final Faults faults;
  private final Report report;

  public KillRounds(Plan plan, ScratchFolder scratch, Faults faults, Report report) {
    this.plan = plan;
    this.scratch = scratch;
    this.faults = faults;
    this.report = report;
  }

  /** Runs all rounds. */
  public void run() throws IOException, InterruptedException {
    try (Node node = Node.start(scratch.resolve("data"))) {
      node.awaitReady();
      String accessKey = ClubClient.register(node.port(), node.hostKey(), CLUB);
      List<Writer> writers = new ArrayList<>();
      for (int i = 0; i < plan.singles() + plan.batches(); i++) {
        int batch = i < plan.singles() ? 1 : plan.batch();
        writers.add(new Writer(CLUB, accessKey, i, batch, plan.seed()));
      }
      SplittableRandom random = new SplittableRandom(plan.seed());
      for (int round = 1; round <= plan.rounds(); round++) {
        round(node, accessKey, writers, round, random.nextInt(KILL_AFTER_MILLIS_MAX));
      }
      for (Writer writer : writers) {
        writer.finish(node.port());
      }
      try (ClubClient reader = new ClubClient(node.port(), CLUB, accessKey)) {
        List<JsonNode> feed = new RecordCheck(reader, writers, faults).look();
        compareWithCopy(feed, reader, writers);
      }
    }
  }

  private void round(
      Node node, String accessKey, List<Writer> writers, int round, int killAfterMillis)
      throws IOException, InterruptedException {
    Duration ready =
        KillRound.run(node, writers, plan.answersFirst(), Duration.ofMillis(killAfterMillis));
    faults.unless(
        ready.toMillis() <= plan.readyMillisMax(),
        "round %d: ready after %d ms",
        round,
        ready.toMillis());
    int events;
    try (ClubClient reader = new ClubClient(node.port(), CLUB, accessKey)) {
      events = new RecordCheck(reader, writers, faults).look().size();
    }
    report.row(
        round,
        ready.toMillis(),
        writers.stream().mapToInt(writer -> writer.kept().size()).sum(),
        writers.stream().mapToInt(writer -> writer.unanswered().size()).sum(),
        events,
        faults.isEmpty() ? "all held" : "see the faults");
    Report.note(
        "round %d: killed %d ms on, ready after %d ms, %d events",
        round, killAfterMillis, ready.toMillis(), events);
  }

  private void compareWithCopy(List<JsonNode> feed, ClubClient original, List<Writer> writers)
      throws IOException {
    String another = "marshland";
    try (Node fresh = Node.start(scratch.resolve("fresh"))) {
      fresh.awaitReady();
      String accessKey = ClubClient.register(fresh.port(), fresh.hostKey(), another);
      try (ClubClient copy = new ClubClient(fresh.port(), another, accessKey)) {
        ShuffledCopy.send(feed, copy, plan.seed());
        String expected = original.digest();
        String found = copy.digest();
        faults.unless(expected.equals(found), "the digest is %s, of the copy %s", expected, found);
        Report.note("digest of both: %s", expected);
        for (Writer writer : writers) {
          String reps = "/dogs/" + writer.dog() + "/reps?limit=1000";
          faults.unless(
              original.get(reps).orThrow().text().equals(copy.get(reps).orThrow().text()),
              "the reps of %s read differently in the copy",
              writer.dog());
        }
      }
    }
  }
}
