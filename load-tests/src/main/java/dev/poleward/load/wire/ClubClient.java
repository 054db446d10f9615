package dev.poleward.load.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.load.training.Sending;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One client of one club, on one connection. For one thread. */
public final class ClubClient implements AutoCloseable {

  private static final Duration ANSWER_MAX = Duration.ofSeconds(60);

  /** The service closes what is idle; well before it does, we open anew. */
  private static final Duration IDLE_MAX = Duration.ofSeconds(10);

  private final int port;
  private final String club;
  private final String accessKey;
  private Connection connection;
  private long usedNanos = System.nanoTime();

  /** Connects. */
  public ClubClient(int port, String club, String accessKey) throws IOException {
    this.port = port;
    this.club = club;
    this.accessKey = accessKey;
    this.connection = Connection.open(port, ANSWER_MAX);
  }

  /**
   * Registers a club.
   *
   * @return its access key
   */
  public static String register(int port, String hostKey, String club) throws IOException {
    String body =
        "{\"id\":\"club-%s\",\"time\":\"2024-01-10T09:00:00Z\",\"club\":\"%s\",\"name\":\"Saltmarsh Weavers\",\"timeZone\":\"Europe/Lisbon\"}"
            .formatted(club, club);
    try (Connection connection = Connection.open(port, ANSWER_MAX)) {
      return connection
          .post("/v1/clubs", hostKey, "application/json", body.getBytes(StandardCharsets.UTF_8))
          .orThrow()
          .json()
          .get("accessKey")
          .asText();
    }
  }

  private Connection connection() throws IOException {
    long now = System.nanoTime();
    if (now - usedNanos > IDLE_MAX.toNanos()) {
      connection.close();
      connection = Connection.open(port, ANSWER_MAX);
    }
    usedNanos = now;
    return connection;
  }

  private String path(String rest) {
    return "/v1/clubs/" + club + rest;
  }

  /** Sends one event, prepared by {@link Sending#body}. */
  public Reply send(byte[] event) throws IOException {
    return connection().post(path("/events"), accessKey, Sending.ONE, event);
  }

  /** Sends a batch, prepared by {@link Sending#bodyOf}. */
  public Reply sendBatch(byte[] events) throws IOException {
    return connection().post(path("/events"), accessKey, Sending.BATCH, events);
  }

  /** Sends events and sees to it that each was kept. */
  public void sendAll(List<Sending> events, int batch) throws IOException {
    for (int from = 0; from < events.size(); from += batch) {
      List<Sending> some = events.subList(from, Math.min(events.size(), from + batch));
      Reply reply = sendBatch(Sending.bodyOf(some)).orThrow();
      if (!allKept(reply.json(), some.size())) {
        throw new IllegalStateException("not all were kept: " + reply);
      }
    }
  }

  /** Whether a batch's answer says that every item is recorded. */
  public static boolean allKept(JsonNode answer, int items) {
    int kept =
        answer.path("accepted").asInt()
            + answer.path("repeated").asInt()
            + answer.path("pending").asInt();
    return kept == items;
  }

  /** Asks for something of the club, {@code /…}. */
  public Reply get(String rest) throws IOException {
    return connection().get(path(rest), accessKey);
  }

  /** The same, in a form of one's own. */
  public Reply get(String rest, String accept) throws IOException {
    return connection().get(path(rest), accessKey, accept);
  }

  /** Asks for something by its whole path. */
  public Reply getPath(String path) throws IOException {
    return connection().get(path, accessKey);
  }

  /** Takes away something of the club. */
  public Reply delete(String rest) throws IOException {
    return connection().delete(path(rest), accessKey);
  }

  /** Sends JSON that is no event. */
  public Reply post(String rest, String json) throws IOException {
    return connection()
        .post(path(rest), accessKey, "application/json", json.getBytes(StandardCharsets.UTF_8));
  }

  /** Every page of a list. */
  public List<JsonNode> all(String rest, String member) throws IOException {
    List<JsonNode> items = new ArrayList<>();
    Optional<String> next = Optional.of(path(rest));
    while (next.isPresent()) {
      Reply page = connection().get(next.get(), accessKey).orThrow();
      JsonNode shown = page.json().get(member);
      shown.forEach(items::add);
      // A feed always says where it goes on, since more may come.
      next = shown.isEmpty() ? Optional.empty() : page.next();
    }
    return items;
  }

  /** The whole feed. */
  public List<JsonNode> feed() throws IOException {
    return all("/events?limit=1000", "events");
  }

  /** Fingerprint of the club's record, with the number of its events. */
  public String digest() throws IOException {
    ObjectNode digest = (ObjectNode) get("/digest").orThrow().json();
    return digest.get("events").asLong() + " " + digest.get("digest").asText();
  }

  @Override
  public void close() throws IOException {
    connection.close();
  }
}
