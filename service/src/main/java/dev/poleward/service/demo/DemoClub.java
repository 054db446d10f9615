package dev.poleward.service.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Fills the service with an invented club and says what to look at. For one thread.
 *
 * <p>The club's first day is kept where everything else is, in its record: it is the time of its
 * registration. So every start tells the same season to the letter, on whatever day; what is there
 * already is not sent again, and what an earlier start did not come to is.
 */
public final class DemoClub implements AutoCloseable {

  /** Weeks of a whole season. */
  public static final int SEASON_WEEKS = 24;

  /** The fewest weeks in which everything happens that the guide shows. */
  public static final int SHORT_SEASON_WEEKS = 4;

  /** The club. */
  static final String CLUB = "saltmarsh";

  private static final String REGISTRATION = "demo-club";
  private static final LocalTime REGISTERED_AT = LocalTime.of(9, 0);
  private static final int BATCH = 500;
  private static final String JSON = "application/json";

  private final DemoClient client;
  private final URI service;
  private final String club;
  private final Path keyFile;
  private final int weeks;
  private final PrintStream out;

  /**
   * A demo of the service at that address.
   *
   * @param keyFile where the club's access key is kept for whoever looks at it
   * @param weeks how long the season is
   */
  public DemoClub(URI service, Path keyFile, int weeks, PrintStream out) {
    this(service, CLUB, keyFile, weeks, out);
  }

  /** A demo in a club of another name. */
  DemoClub(URI service, String club, Path keyFile, int weeks, PrintStream out) {
    this.client = new DemoClient(service);
    this.service = service;
    this.club = club;
    this.keyFile = keyFile;
    this.weeks = weeks;
    this.out = out;
  }

  /**
   * Posts what is not there yet, and prints what to look at.
   *
   * @throws IOException when the service does not answer as it should
   */
  public void show(String hostKey, Clock clock) throws IOException, InterruptedException {
    LocalDate firstDay = firstDay(hostKey, clock);
    String key = key(hostKey, clock.instant());
    post(key, OfflinePhones.asDelivered(Season.of(firstDay, weeks)));
    new DemoGuide(service, club, keyFile, sights(firstDay)).print(out);
  }

  /**
   * Sends every event of the club once more under other ids, one by one, and reads between. It is
   * for the rehearsal, which is to run what the service mostly runs.
   *
   * @param rounds how often
   */
  public void practise(Clock clock, int rounds) throws IOException, InterruptedException {
    String key = Files.readString(keyFile);
    for (int round = 0; round < rounds; round++) {
      for (ObjectNode event : Season.of(firstDayOfNewClub(clock), weeks)) {
        event.put("id", "practice-" + round + "-" + event.get("id").textValue());
        client.send(path("/events"), key, "application/cloudevents+json", event);
      }
      for (Sight sight : sights(firstDayOfNewClub(clock))) {
        client.look(sight.pathIn(path("")), key, sight.form());
      }
    }
  }

  @Override
  public void close() {
    client.close();
  }

  private String path(String below) {
    return "/v1/clubs/" + club + below;
  }

  private List<Sight> sights(LocalDate firstDay) {
    return Sight.all(Season.classSession(weeks), firstDay.plusWeeks(weeks).minusDays(1));
  }

  /** The season ends yesterday, seen from the first start. */
  private LocalDate firstDayOfNewClub(Clock clock) {
    return LocalDate.ofInstant(clock.instant(), Season.ZONE).minusWeeks(weeks);
  }

  private LocalDate firstDay(String hostKey, Clock clock) throws IOException, InterruptedException {
    Optional<JsonNode> known = client.find(path(""), hostKey);
    if (known.isEmpty()) {
      LocalDate firstDay = firstDayOfNewClub(clock);
      register(hostKey, firstDay);
      return firstDay;
    }
    if (!known.get().path("event").asText().equals(REGISTRATION)) {
      throw new IOException(
          "there is a club %s already that is not the demo's; give the demo another --data folder"
              .formatted(club));
    }
    Instant registered = Instant.parse(known.get().path("registered").textValue());
    return LocalDate.ofInstant(registered, Season.ZONE);
  }

  private void register(String hostKey, LocalDate firstDay)
      throws IOException, InterruptedException {
    ObjectNode registration =
        JsonNodeFactory.instance
            .objectNode()
            .put("id", REGISTRATION)
            .put(
                "time",
                firstDay
                    .atTime(REGISTERED_AT)
                    .atZone(Season.ZONE)
                    .toOffsetDateTime()
                    .toInstant()
                    .toString())
            .put("club", club)
            .put("name", "Saltmarsh Weavers")
            .put("timeZone", Season.ZONE.getId());
    keep(client.send("/v1/clubs", hostKey, JSON, registration));
  }

  /** The club's key; a new one where an earlier start was stopped before it could be kept. */
  private String key(String hostKey, Instant now) throws IOException, InterruptedException {
    if (!Files.exists(keyFile)) {
      ObjectNode wish =
          JsonNodeFactory.instance.objectNode().put("id", "demo-key-" + now.toEpochMilli());
      wish.putArray("scopes")
          .add("club:manage")
          .add("records:write")
          .add("records:read")
          .add("timing:push");
      keep(client.send(path("/access-keys"), hostKey, JSON, wish));
    }
    return Files.readString(keyFile);
  }

  private void keep(JsonNode answer) throws IOException {
    JsonNode accessKey = answer.get("accessKey");
    if (accessKey == null) {
      throw new IOException("the club's key was shown to somebody else");
    }
    Files.deleteIfExists(keyFile);
    Files.createFile(
        keyFile,
        PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    Files.writeString(keyFile, accessKey.textValue());
  }

  private void post(String key, List<ObjectNode> season) throws IOException, InterruptedException {
    Set<String> there = client.eventsOf(path(""), key);
    List<ObjectNode> missing =
        season.stream().filter(event -> !there.contains(event.get("id").textValue())).toList();
    if (missing.isEmpty()) {
      out.println("The club is here already, with all its events; nothing is posted.");
      return;
    }
    out.println(
        missing.size() == season.size()
            ? "Posting %d events of %d weeks.".formatted(season.size(), weeks)
            : "An earlier start was stopped half-way; posting what is missing.");
    for (int from = 0; from < missing.size(); from += BATCH) {
      List<ObjectNode> part = missing.subList(from, Math.min(missing.size(), from + BATCH));
      ArrayNode batch = JsonNodeFactory.instance.arrayNode().addAll(part);
      JsonNode answer =
          client.send(path("/events"), key, "application/cloudevents-batch+json", batch);
      if (!answer.path("refused").isEmpty() || !answer.path("contradicted").isEmpty()) {
        throw new IOException("the service did not take some events: " + answer);
      }
      out.printf(
          "  %5d of %d, %d new, %d of them waiting for others, %d sent before%n",
          from + part.size(),
          missing.size(),
          answer.path("accepted").asInt(),
          answer.path("waiting").asInt(),
          answer.path("repeated").asInt());
    }
  }
}
