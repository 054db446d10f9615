package dev.poleward.service.demo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Fills the service with an invented club and says what to look at. For one thread. */
public final class DemoClub {

  private static final long SEED = 20_260_504L;
  private static final int BATCH = 500;
  private static final long WEEKS = 8;
  private static final Duration ANSWER_MAX = Duration.ofSeconds(60);
  private static final ObjectMapper JSON = new ObjectMapper();

  private final HttpClient client = HttpClient.newHttpClient();
  private final URI service;
  private final Path keyFile;
  private final PrintStream out;

  /**
   * A demo of the service at that address.
   *
   * @param keyFile where the club's access key is kept for the next start
   */
  public DemoClub(URI service, Path keyFile, PrintStream out) {
    this.service = service;
    this.keyFile = keyFile;
    this.out = out;
  }

  /**
   * Posts the club, unless it is there, and prints what to look at.
   *
   * @throws IOException when the service does not answer as it should
   */
  public void show(String hostKey, Clock clock) throws IOException, InterruptedException {
    if (Files.exists(keyFile)) {
      out.println("The club is there already; nothing is posted.");
    } else {
      post(hostKey, clock);
    }
    new DemoGuide(service, keyFile, out).print();
  }

  private void post(String hostKey, Clock clock) throws IOException, InterruptedException {
    ObjectNode club =
        JsonNodeFactory.instance
            .objectNode()
            .put("id", "demo-club")
            .put("club", DemoEvents.CLUB)
            .put("name", "Saltmarsh Weavers")
            .put("timeZone", "Europe/Lisbon");
    JsonNode registered = send("/v1/clubs", hostKey, "application/json", club);
    JsonNode accessKey = registered.get("accessKey");
    if (accessKey == null) {
      throw new IOException(
          "the club " + DemoEvents.CLUB + " is here, but its key is not in " + keyFile);
    }
    List<ObjectNode> events = DemoEvents.of(SEED, begin(clock));
    for (int from = 0; from < events.size(); from += BATCH) {
      ArrayNode batch = JsonNodeFactory.instance.arrayNode();
      batch.addAll(events.subList(from, Math.min(events.size(), from + BATCH)));
      JsonNode answer =
          send(
              "/v1/clubs/" + DemoEvents.CLUB + "/events",
              accessKey.textValue(),
              "application/cloudevents-batch+json",
              batch);
      if (!answer.path("refused").isEmpty()) {
        throw new IOException("the service refused some events: " + answer.path("refused"));
      }
      out.printf("posted %d of %d events%n", from + batch.size(), events.size());
    }
    // Last, so that a demo that was stopped half-way says so instead of showing half a club.
    Files.createFile(
        keyFile,
        PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    Files.writeString(keyFile, accessKey.textValue());
  }

  /**
   * Sends every event of the club once more under other ids, one by one, and reads between. It is
   * for the rehearsal, which is to run what the service mostly runs.
   *
   * @param rounds how often
   */
  public void practise(Clock clock, int rounds) throws IOException, InterruptedException {
    String key = Files.readString(keyFile);
    String club = "/v1/clubs/" + DemoEvents.CLUB;
    for (int round = 0; round < rounds; round++) {
      for (ObjectNode event : DemoEvents.of(SEED, begin(clock))) {
        event.put("id", "practice-" + round + "-" + event.get("id").textValue());
        send(club + "/events", key, "application/cloudevents+json", event);
      }
      read(club + "/dogs/juniper/reps", key);
      read(club + "/sessions/s-3-1", key);
      read(club + "/waiting", key);
      read(club + "/digest", key);
    }
  }

  private static OffsetDateTime begin(Clock clock) {
    return clock.instant().atOffset(ZoneOffset.UTC).truncatedTo(ChronoUnit.HOURS).minusWeeks(WEEKS);
  }

  private void read(String path, String key) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(service.resolve(path))
            .timeout(ANSWER_MAX)
            .header("Authorization", "Bearer " + key)
            .build();
    int status = client.send(request, BodyHandlers.discarding()).statusCode();
    if (status != 200) {
      throw new IOException(path + " was answered " + status);
    }
  }

  private JsonNode send(String path, String key, String mediaType, JsonNode body)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(service.resolve(path))
            .timeout(ANSWER_MAX)
            .header("Authorization", "Bearer " + key)
            .header("Content-Type", mediaType)
            .POST(BodyPublishers.ofString(written(body)))
            .build();
    HttpResponse<String> response = client.send(request, BodyHandlers.ofString());
    if (response.statusCode() >= 300) {
      throw new IOException(path + " was answered " + response.statusCode() + response.body());
    }
    return JSON.readTree(response.body());
  }

  private static String written(JsonNode body) {
    try {
      return JSON.writeValueAsString(body);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree can be written", e);
    }
  }
}
