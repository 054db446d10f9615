package dev.poleward.load.training;

import dev.poleward.load.figures.Latencies;
import dev.poleward.load.node.Node;
import dev.poleward.load.wire.ClubClient;
import dev.poleward.load.wire.Reply;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Sends reps over several connections, each with a dog and a session of its own: the next when the
 * one before is answered. Anything but a full success ends it. For one thread.
 */
public final class RepSender implements AutoCloseable {

  private static final Instant BEGIN = Instant.parse("2025-03-04T17:00:00Z");

  /**
   * What was sent in a time.
   *
   * @param latencies one a request
   */
  public record Sent(long events, Duration elapsed, Latencies latencies) {

    public double eventsPerSecond() {
      return events / (elapsed.toNanos() / 1e9);
    }
  }

  private record Line(ClubClient client, Session session) {}

  private final List<Line> lines = new ArrayList<>();
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final int batch;

  private RepSender(int batch) {
    this.batch = batch;
  }

  /**
   * Registers clubs, and connects.
   *
   * @param batch reps in a request; 1 for requests without a batch
   */
  public static RepSender open(Node node, String prefix, int clubs, int connections, int batch)
      throws IOException {
    RepSender sender = new RepSender(batch);
    List<String> accessKeys = new ArrayList<>();
    for (int i = 0; i < clubs; i++) {
      accessKeys.add(ClubClient.register(node.port(), node.hostKey(), prefix + i));
    }
    for (int i = 0; i < connections; i++) {
      SplittableRandom random = new SplittableRandom(i);
      String dog = ClubHistory.dogName(i);
      Session session = new Session(random, dog, BEGIN.plusSeconds(i));
      ClubClient client =
          new ClubClient(node.port(), prefix + i % clubs, accessKeys.get(i % clubs));
      client.sendAll(
          List.of(ClubHistory.dog(random, dog, BEGIN), session.opened(), session.setup()), 10);
      sender.lines.add(new Line(client, session));
    }
    return sender;
  }

  /** Sends for a while, over all connections. */
  public Sent run(Duration time) throws InterruptedException {
    Latencies latencies = new Latencies();
    long begun = System.nanoTime();
    long end = begun + time.toNanos();
    List<Future<Long>> all =
        lines.stream().map(line -> threads.submit(() -> send(line, end, latencies))).toList();
    long events = 0;
    for (Future<Long> each : all) {
      try {
        events += each.get();
      } catch (ExecutionException e) {
        throw new IllegalStateException("a connection gave up", e.getCause());
      }
    }
    return new Sent(events, Duration.ofNanos(System.nanoTime() - begun), latencies);
  }

  private long send(Line line, long end, Latencies latencies) throws IOException {
    long events = 0;
    while (System.nanoTime() < end) {
      byte[] body = body(line.session());
      long begun = System.nanoTime();
      Reply reply = batch == 1 ? line.client().send(body) : line.client().sendBatch(body);
      latencies.took(System.nanoTime() - begun);
      requireKept(reply);
      events += batch;
    }
    return events;
  }

  private byte[] body(Session session) {
    if (batch == 1) {
      return session.rep().body();
    }
    List<Sending> reps = new ArrayList<>(batch);
    for (int i = 0; i < batch; i++) {
      reps.add(session.rep());
    }
    return Sending.bodyOf(reps);
  }

  private void requireKept(Reply reply) {
    boolean kept =
        batch == 1
            ? reply.status() == 201
            : reply.status() == 200 && reply.json().get("accepted").asInt() == batch;
    if (!kept) {
      throw new IllegalStateException("not all kept and applied: " + reply);
    }
  }

  @Override
  public void close() throws IOException {
    threads.close();
    for (Line line : lines) {
      line.client().close();
    }
  }
}
