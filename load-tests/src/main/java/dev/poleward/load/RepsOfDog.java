package dev.poleward.load;

import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Latencies;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.load.training.ClubHistory;
import dev.poleward.load.training.OtherDogs;
import dev.poleward.load.training.Sending;
import dev.poleward.load.training.Session;
import dev.poleward.load.wire.ClubClient;
import dev.poleward.load.wire.ServerTime;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;

/**
 * All reps of a dog with a long record, each placed by the setup that stood and by its corrections:
 * as the first read after something new in the club, and as a read of what is known already; and
 * what is made of them: the curve, the progress, care, and plans, which are recorded each time.
 * Other dogs of the club, if it has some, are looked at for what is expected of this one: read for
 * the first time in a process, and after news that concern one of them or all.
 */
public final class RepsOfDog {

  private static final String DOG = ClubHistory.dogName(0);
  private static final String OTHER_DOG = "another-dog";
  private static final String LIST = "/dogs/" + DOG + "/reps?limit=1000";
  private static final String ROUTE = "/v1/clubs/{club}/dogs/{dog}/reps";
  private static final String CURVE = "/dogs/" + DOG + "/angle-mastery?poles=4";
  private static final String CURVE_ROUTE = "/v1/clubs/{club}/dogs/{dog}/angle-mastery";
  private static final String PROGRESS = "/dogs/" + DOG + "/progress";
  private static final String PROGRESS_ROUTE = "/v1/clubs/{club}/dogs/{dog}/progress";
  private static final String PLANS = "/dogs/" + DOG + "/plans";
  private static final String PLANS_ROUTE = "/v1/clubs/{club}/dogs/{dog}/plans";
  private static final String CARE = "/dogs/" + DOG + "/care";
  private static final String CARE_ROUTE = "/v1/clubs/{club}/dogs/{dog}/care";
  private static final String BARE = "/health/live";

  /** Something that is read. */
  private interface Read {
    void once(ClubClient client) throws IOException;
  }

  private static final Read OF_PROGRESS = some -> some.get(PROGRESS).orThrow();
  private static final Read OF_PLAN =
      some -> some.post(PLANS, "{\"id\":\"%s\"}".formatted(UUID.randomUUID())).orThrow();

  private final Node node;
  private final ClubClient client;
  private final Session othersSession;
  private final int repetitions;
  private final int rememberedRepetitions;
  private final Report report;

  private RepsOfDog(
      Node node,
      ClubClient client,
      Session othersSession,
      int repetitions,
      int rememberedRepetitions,
      Report report) {
    this.node = node;
    this.client = client;
    this.othersSession = othersSession;
    this.repetitions = repetitions;
    this.rememberedRepetitions = rememberedRepetitions;
    this.report = report;
  }

  public static void main(String[] args) throws IOException {
    Arguments arguments = new Arguments(args);
    int sessions = arguments.whole("sessions", 500, 1);
    int reps = arguments.whole("repsInSession", 10, 1);
    int percent = arguments.whole("correctedPercent", 1, 0);
    int warmUps = arguments.whole("warmUps", 300, 0);
    int repetitions = arguments.whole("repetitions", 100, 1);
    int others = arguments.whole("others", 0, 0);
    int othersReps = arguments.whole("othersReps", 1_000, 10);
    int remembered = arguments.whole("rememberedRepetitions", 5_000, 1);
    TimeLimit.set(arguments.limit(30));
    boolean keep = arguments.keep();
    String settings = arguments.settings();
    try (ScratchFolder scratch = new ScratchFolder("reps-of-dog", keep);
        Node node = Node.start(scratch.resolve("data"))) {
      Report report =
          new Report(
              "RepsOfDog", settings, "read", "p50 ms", "p99 ms", "max ms", "service's own mean ms");
      node.awaitReady();
      String club = "saltmarsh";
      String accessKey = ClubClient.register(node.port(), node.hostKey(), club);
      Session other;
      try (ClubClient client = new ClubClient(node.port(), club, accessKey)) {
        fill(client, sessions, new ClubHistory.Shape(1, reps, percent, percent));
        fillOthers(client, others, othersReps);
        other = sessionOfAnother(client);
        RepsOfDog program = new RepsOfDog(node, client, other, repetitions, remembered, report);
        program.measure(warmUps);
        if (others > 0) {
          program.measureNewsOfOthers();
        }
      }
      node.stop();
      node.startAgain();
      node.awaitReady();
      try (ClubClient client = new ClubClient(node.port(), club, accessKey)) {
        RepsOfDog program = new RepsOfDog(node, client, other, 1, 1, report);
        program.timed("progress, the first of a process", PROGRESS_ROUTE, 1, OF_PROGRESS);
        program.timed("plan, the first of a process", PLANS_ROUTE, 1, OF_PLAN);
      }
      report.print();
      scratch.wentWell();
    }
  }

  private static void fill(ClubClient client, int sessions, ClubHistory.Shape shape)
      throws IOException {
    client.sendAll(new ClubHistory(1, shape).nextSessions(sessions), 500);
    Report.note("%d reps stand", client.all(LIST, "reps").size());
  }

  private static void fillOthers(ClubClient client, int others, int reps) throws IOException {
    OtherDogs dogs = new OtherDogs(3, reps, Instant.now().minus(Duration.ofDays(2)));
    for (int i = 0; i < others; i++) {
      client.sendAll(dogs.all(i), 500);
    }
  }

  private static Session sessionOfAnother(ClubClient client) throws IOException {
    SplittableRandom random = new SplittableRandom(2);
    Instant now = Instant.now();
    Session session = new Session(random, OTHER_DOG, now);
    client.sendAll(
        List.of(ClubHistory.dog(random, OTHER_DOG, now), session.opened(), session.setup()), 10);
    return session;
  }

  private void measure(int warmUps) throws IOException {
    Read page = some -> some.get(LIST).orThrow();
    Read all = some -> some.all(LIST, "reps");
    Read curve = some -> some.get(CURVE).orThrow();
    Read progress = OF_PROGRESS;
    Read care = some -> some.get(CARE).orThrow();
    Read plan = OF_PLAN;
    Read bare = some -> some.getPath(BARE).orThrow();
    for (int i = 0; i < warmUps; i++) {
      somethingNew();
      page.once(client);
      all.once(client);
      curve.once(client);
      progress.once(client);
      care.once(client);
      plan.once(client);
    }
    afterNews("first page, after something new", ROUTE, page);
    timed("first page, again", ROUTE, repetitions, page);
    afterNews("all pages, after something new", "", all);
    timed("all pages, again", "", repetitions, all);
    afterNews("curve, after something new", CURVE_ROUTE, curve);
    timed("curve, again", CURVE_ROUTE, rememberedRepetitions, curve);
    afterNews("progress, after something new", PROGRESS_ROUTE, progress);
    timed("progress, again", PROGRESS_ROUTE, rememberedRepetitions, progress);
    afterNews("care, after something new", CARE_ROUTE, care);
    timed("care, again", CARE_ROUTE, rememberedRepetitions, care);
    afterNews("plan, made and recorded, after something new", PLANS_ROUTE, plan);
    timed("plan, made and recorded, one after the other", PLANS_ROUTE, repetitions, plan);
    timed("bare route " + BARE, BARE, rememberedRepetitions, bare);
    timed("curve, once more", CURVE_ROUTE, rememberedRepetitions, curve);
    timed("bare route, once more", BARE, rememberedRepetitions, bare);
  }

  /** A rep of another dog: news for the club, and the size of what is read stays. */
  private void somethingNew() throws IOException {
    Sending rep = othersSession.rep();
    client.send(rep.body()).orThrow();
  }

  /** Reps of one of them, the day before, from a phone that was away; and what concerns all. */
  private void measureNewsOfOthers() throws IOException {
    Instant yesterday = Instant.now().minus(Duration.ofDays(1));
    Session late = new Session(new SplittableRandom(4), OtherDogs.name(0), yesterday);
    client.sendAll(List.of(late.opened(), late.setup()), 10);
    afterNews(
        "progress, after a late rep of one other",
        PROGRESS_ROUTE,
        () -> client.send(late.rep().body()).orThrow(),
        OF_PROGRESS);
    afterNews(
        "progress, after a handler was registered", PROGRESS_ROUTE, this::handler, OF_PROGRESS);
  }

  private void handler() throws IOException {
    String id = UUID.randomUUID().toString();
    String data = "{\"handler\":\"%s\",\"name\":\"Robin\"}".formatted(id);
    client.send(new Sending(id, "handler.registered.v1", Instant.now(), data).body()).orThrow();
  }

  /** Something that happens before each read. */
  private interface News {
    void come() throws IOException;
  }

  private void afterNews(String what, String route, Read read) throws IOException {
    afterNews(what, route, this::somethingNew, read);
  }

  private void afterNews(String what, String route, News news, Read read) throws IOException {
    Latencies latencies = new Latencies();
    ServerTime before = ServerTime.now(node.port(), route);
    for (int i = 0; i < repetitions; i++) {
      news.come();
      time(read, latencies);
    }
    report(what, latencies, route, before);
  }

  private void timed(String what, String route, int times, Read read) throws IOException {
    Latencies latencies = new Latencies();
    ServerTime before = ServerTime.now(node.port(), route);
    for (int i = 0; i < times; i++) {
      time(read, latencies);
    }
    report(what, latencies, route, before);
  }

  private void time(Read read, Latencies latencies) throws IOException {
    long begun = System.nanoTime();
    read.once(client);
    latencies.took(System.nanoTime() - begun);
  }

  private void report(String what, Latencies latencies, String route, ServerTime before)
      throws IOException {
    report.row(
        what,
        latencies.percentile(50),
        latencies.percentile(99),
        latencies.max(),
        route.isEmpty()
            ? ""
            : Latencies.millis(ServerTime.now(node.port(), route).meanMillisSince(before)));
  }
}
