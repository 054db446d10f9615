package dev.poleward.load.drill;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.load.figures.Latencies;
import dev.poleward.load.figures.Report;
import dev.poleward.load.kafka.KafkaCluster;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.SharedKeys;
import dev.poleward.load.training.Sending;
import dev.poleward.load.wire.ClubClient;
import dev.poleward.load.wire.Reply;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Two nodes on one cluster: what holds between them, with all up and with one lost. */
public final class TwoNodes {

  private static final String CLUB = "saltmarsh";
  private static final int REPS_READ_EVERY = 20;
  private static final int WRITTEN_AROUND_A_LOSS = 200;

  private final KafkaCluster cluster;
  private final Node a;
  private final Node b;
  private final String accessKey;
  private final Faults faults;
  private final Report report;
  private final List<Writer> writers = new ArrayList<>();

  private TwoNodes(
      KafkaCluster cluster, Node a, Node b, String accessKey, Faults faults, Report report) {
    this.cluster = cluster;
    this.a = a;
    this.b = b;
    this.accessKey = accessKey;
    this.faults = faults;
    this.report = report;
  }

  /** Registers a club through the first node. */
  public static TwoNodes of(
      KafkaCluster cluster, Node a, Node b, SharedKeys keys, Faults faults, Report report)
      throws IOException {
    String accessKey = ClubClient.register(a.port(), keys.hostKey(), CLUB);
    TwoNodes nodes = new TwoNodes(cluster, a, b, accessKey, faults, report);
    for (int i = 0; i < 2; i++) {
      nodes.writers.add(new Writer(CLUB, accessKey, i, 1, i));
    }
    return nodes;
  }

  private ClubClient at(Node node) throws IOException {
    return new ClubClient(node.port(), CLUB, accessKey);
  }

  /** What is written through one node is read through the other, at once. */
  public void readOwnWrites(int events) throws IOException, InterruptedException {
    faults.unless(
        cluster.faultsOfJournal().isEmpty(),
        "copies of the journal: %s",
        cluster.faultsOfJournal());
    Latencies latencies = new Latencies();
    try (ClubClient atA = at(a);
        ClubClient atB = at(b)) {
      for (int i = 0; i < events; i++) {
        boolean throughA = i % 2 == 0;
        Writer writer = writers.get(i % 2);
        writer.write(throughA ? a.port() : b.port(), 1);
        Sending last = writer.kept().getLast();
        ClubClient other = throughA ? atB : atA;
        long begun = System.nanoTime();
        Reply fate = other.get("/events/" + last.id());
        latencies.took(System.nanoTime() - begun);
        faults.unless(fate.status() == 200, "%s, written elsewhere: %s", last.id(), fate);
        if (i % REPS_READ_EVERY == 0 && last.type().equals("rep.logged.v1")) {
          faults.unless(
              lists(other, writer.dog(), last.id()), "rep %s, written elsewhere", last.id());
        }
      }
    }
    report.row(
        "written here, read there, " + events + " times",
        "p50 %s ms, p99 %s ms".formatted(latencies.percentile(50), latencies.percentile(99)),
        result());
  }

  private static boolean lists(ClubClient client, String dog, String rep) throws IOException {
    return client.all("/dogs/" + dog + "/reps?limit=1000", "reps").stream()
        .anyMatch(each -> each.get("rep").asText().equals(rep));
  }

  /**
   * An access key opens both nodes as soon as one has made it, and none once one has revoked it.
   */
  public void keys() throws IOException {
    try (ClubClient atA = at(a)) {
      JsonNode made =
          atA.post(
                  "/access-keys",
                  "{\"id\":\"key-made\",\"key\":\"phone-1\",\"scopes\":[\"records:read\"]}")
              .orThrow()
              .json();
      try (ClubClient phone = new ClubClient(b.port(), CLUB, made.get("accessKey").asText())) {
        Reply open = phone.get("/dogs");
        faults.unless(open.status() == 200, "a key made at one node, at the other: %s", open);
        atA.delete("/access-keys/phone-1").orThrow();
        Reply shut = phone.get("/dogs");
        faults.unless(shut.status() == 401, "a key revoked at one node, at the other: %s", shut);
      }
    }
    report.row("a key made, used, revoked, refused", "", result());
  }

  /** One node is lost: its writer goes on through the other, and it comes back with everything. */
  public void loseNode() throws IOException, InterruptedException {
    Writer writer = writers.getFirst();
    long before = writer.answers();
    try (ExecutorService thread = Executors.newSingleThreadExecutor()) {
      int port = a.port();
      Future<?> writing =
          thread.submit(
              () -> {
                writer.writeUntilCut(port);
                return null;
              });
      while (writer.answers() < before + WRITTEN_AROUND_A_LOSS && !writing.isDone()) {
        Thread.sleep(1);
      }
      a.kill();
      writing.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the writer failed", e.getCause());
    }
    Duration longest = writer.write(b.port(), WRITTEN_AROUND_A_LOSS);
    a.startAgain();
    Duration ready = a.awaitReady();
    same();
    report.row(
        "a node killed",
        "longest write through the other %d ms, ready again after %d ms"
            .formatted(longest.toMillis(), ready.toMillis()),
        result());
  }

  /** One broker is lost, the one that leads where the club is; then it comes back. */
  public void loseBroker() throws IOException, InterruptedException {
    int broker = cluster.killLeaderOf(CLUB);
    Duration longest = writers.get(0).write(a.port(), WRITTEN_AROUND_A_LOSS);
    Duration alsoThere = writers.get(1).write(b.port(), WRITTEN_AROUND_A_LOSS);
    same();
    int refusals = writers.stream().mapToInt(Writer::refusals).sum();
    cluster.startAgain(broker);
    same();
    report.row(
        "the leading broker killed",
        "longest write %d ms through one node, then %d ms through the other; %d times told to come again"
            .formatted(longest.toMillis(), alsoThere.toMillis(), refusals),
        result());
  }

  /** Everything is there through both nodes, and their digests are equal. */
  public void same() throws IOException {
    try (ClubClient atA = at(a);
        ClubClient atB = at(b)) {
      int ofA = new RecordCheck(atA, writers, faults).look().size();
      int ofB = new RecordCheck(atB, writers, faults).look().size();
      faults.unless(ofA == ofB, "%d events at one node, %d at the other", ofA, ofB);
      String digestA = atA.digest();
      String digestB = atB.digest();
      faults.unless(digestA.equals(digestB), "digest %s at one node, %s", digestA, digestB);
      Report.note("both nodes: %s", digestA);
    }
  }

  private String result() {
    return faults.isEmpty() ? "held" : "see the faults";
  }
}
