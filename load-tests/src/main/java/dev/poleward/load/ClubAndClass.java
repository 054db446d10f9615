package dev.poleward.load;

import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Latencies;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.load.training.ClassEvenings;
import dev.poleward.load.training.ClubHistory;
import dev.poleward.load.training.Sending;
import dev.poleward.load.wire.ClubClient;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The club at a glance and the report of a class, for a year and for four weeks: as the first read
 * of a new service, as the first read after something new in the club, and again; the year also on
 * paper. Half of the dogs follow a programme of the club's own.
 */
public final class ClubAndClass {

  private static final String CLASS = "evening";
  private static final Instant BEGIN = Instant.parse("2024-03-04T17:00:00Z");
  private static final Instant FIRST_EVENING = Instant.parse("2025-11-30T18:00:00Z");
  private static final String AS_OF = "asOf=2026-11-28T20:00:00Z";
  private static final String OVERVIEW = "/overview?limit=300&" + AS_OF;
  private static final String REPORT = "/classes/" + CLASS + "/report?" + AS_OF;
  private static final String OF_A_YEAR = REPORT + "&from=2025-11-29";

  private final ClubClient client;
  private final Report report;
  private int news;

  private ClubAndClass(ClubClient client, Report report) {
    this.client = client;
    this.report = report;
  }

  public static void main(String[] args) throws IOException {
    Arguments arguments = new Arguments(args);
    int dogs = arguments.whole("dogs", 100, 1);
    int sessions = arguments.whole("sessionsEach", 40, 1);
    int reps = arguments.whole("repsInSession", 10, 1);
    int members = arguments.whole("members", 12, 1);
    int warmUps = arguments.whole("warmUps", 20, 0);
    int repetitions = arguments.whole("repetitions", 30, 1);
    TimeLimit.set(arguments.limit(30));
    boolean keep = arguments.keep();
    String settings = arguments.settings();
    try (ScratchFolder scratch = new ScratchFolder("club-and-class", keep);
        Node node = Node.start(scratch.resolve("data"))) {
      Report report =
          new Report("ClubAndClass", settings, "read", "p50 ms", "p99 ms", "max ms", "KiB");
      node.awaitReady();
      String club = "saltmarsh";
      String accessKey = ClubClient.register(node.port(), node.hostKey(), club);
      try (ClubClient client = new ClubClient(node.port(), club, accessKey)) {
        ClubAndClass program = new ClubAndClass(client, report);
        program.fill(dogs, sessions, reps, Math.min(members, dogs));
        program.measure(warmUps, repetitions);
      }
      report.print();
      scratch.wentWell();
    }
  }

  private void fill(int dogs, int sessionsEach, int repsInSession, int members) throws IOException {
    ClubHistory.Shape shape = new ClubHistory.Shape(dogs, repsInSession, 1, 1);
    client.sendAll(new ClubHistory(1, shape).nextSessions(dogs * sessionsEach), 500);
    ClassEvenings evenings =
        new ClassEvenings(
            2, CLASS, IntStream.range(0, members).mapToObj(ClubHistory::dogName).toList());
    List<Sending> events = new ArrayList<>(programmes(dogs));
    events.addAll(evenings.formed(BEGIN));
    events.addAll(evenings.weeks(52, FIRST_EVENING, 5));
    client.sendAll(events, 500);
  }

  private List<Sending> programmes(int dogs) {
    List<Sending> events = new ArrayList<>();
    events.add(
        new Sending(
            "own-programme",
            "programme.published.v1",
            BEGIN,
            "{\"name\":\"Own\",\"programme\":\"own\",\"stages\":[{\"entries\":{\"rungs\":{\"end\":90,\"sides\":\"both\",\"start\":15,\"stepDegrees\":5}},"
                + "\"handlings\":[{\"dogSide\":\"left\",\"manoeuvre\":\"alongside\"},{\"dogSide\":\"right\",\"manoeuvre\":\"alongside\"},{\"manoeuvre\":\"send\"}],"
                + "\"leadIn\":\"tunnel\",\"leadInDistance\":4.7,\"poles\":4,\"stage\":\"turned\"}],\"version\":1}"));
    for (int dog = 0; dog < dogs; dog += 2) {
      events.add(
          new Sending(
              "own-programme-of-" + dog,
              "programme.assigned.v1",
              BEGIN,
              "{\"dog\":\"%s\",\"programme\":\"own\"}".formatted(ClubHistory.dogName(dog))));
    }
    return events;
  }

  private void measure(int warmUps, int repetitions) throws IOException {
    timed("overview, the first ever", 1, () -> {}, OVERVIEW);
    timed("report of a year, the first ever", 1, () -> {}, OF_A_YEAR);
    for (int i = 0; i < warmUps; i++) {
      somethingNew();
      client.get(OVERVIEW).orThrow();
      client.get(OF_A_YEAR).orThrow();
      client.get(REPORT).orThrow();
    }
    timed("overview, after something new", repetitions, this::somethingNew, OVERVIEW);
    timed("overview, again", repetitions, () -> {}, OVERVIEW);
    timed("report of four weeks, after something new", repetitions, this::somethingNew, REPORT);
    timed("report of four weeks, again", repetitions, () -> {}, REPORT);
    timed("report of a year, after something new", repetitions, this::somethingNew, OF_A_YEAR);
    timed("report of a year, again", repetitions, () -> {}, OF_A_YEAR);
    for (String form : List.of("text/html", "application/pdf")) {
      timed("report of a year as " + form + ", first", 1, this::somethingNew, OF_A_YEAR, form);
      timed(
          "report of a year as " + form + ", after something new",
          repetitions,
          this::somethingNew,
          OF_A_YEAR,
          form);
    }
  }

  /** A ground more: news for the club, and the size of what is read stays. */
  private void somethingNew() throws IOException {
    Instant now = Instant.now();
    news++;
    String ground = "{\"ground\":\"ground-%d\"}".formatted(news);
    client.send(new Sending("news-" + news, "ground.registered.v1", now, ground).body()).orThrow();
  }

  /** Something that happens before each read. */
  private interface Before {
    void read() throws IOException;
  }

  private void timed(String what, int times, Before before, String read) throws IOException {
    timed(what, times, before, read, "application/json");
  }

  private void timed(String what, int times, Before before, String read, String form)
      throws IOException {
    Latencies latencies = new Latencies();
    int bytes = 0;
    for (int i = 0; i < times; i++) {
      before.read();
      long begun = System.nanoTime();
      bytes = client.get(read, form).orThrow().length();
      latencies.took(System.nanoTime() - begun);
    }
    report.row(
        what,
        latencies.percentile(50),
        latencies.percentile(99),
        latencies.max(),
        String.valueOf(bytes / 1024));
  }
}
