package dev.poleward.service.demo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Speaks to the service over HTTP, as any app would. An answer that is none of those expected ends
 * the demo. For one thread.
 */
final class DemoClient implements AutoCloseable {

  private static final Duration ANSWER_MAX = Duration.ofSeconds(60);
  private static final int OK = 200;
  private static final int NOT_OK = 300;
  private static final int NOT_FOUND = 404;
  private static final Pattern NEXT = Pattern.compile("<([^>]*)>; *rel=\"next\"");
  private static final ObjectMapper JSON = new ObjectMapper();

  private final HttpClient client = HttpClient.newHttpClient();
  private final URI service;

  DemoClient(URI service) {
    this.service = service;
  }

  /** Posts a body; gives back the answer. */
  JsonNode send(String path, String key, String mediaType, JsonNode body)
      throws IOException, InterruptedException {
    HttpResponse<String> answer =
        client.send(
            asking(path, key)
                .header("Content-Type", mediaType)
                .POST(BodyPublishers.ofString(written(body)))
                .build(),
            BodyHandlers.ofString());
    if (answer.statusCode() >= NOT_OK) {
      throw unexpected(path, answer.statusCode() + " " + answer.body());
    }
    return JSON.readTree(answer.body());
  }

  /** Reads a resource, if there is one. */
  Optional<JsonNode> find(String path, String key) throws IOException, InterruptedException {
    HttpResponse<String> answer = client.send(asking(path, key).build(), BodyHandlers.ofString());
    return switch (answer.statusCode()) {
      case OK -> Optional.of(JSON.readTree(answer.body()));
      case NOT_FOUND -> Optional.empty();
      default -> throw unexpected(path, answer.statusCode() + " " + answer.body());
    };
  }

  /** Reads a resource that must be there, in some form, and forgets it. */
  void look(String path, String key, String form) throws IOException, InterruptedException {
    int status =
        client
            .send(asking(path, key).header("Accept", form).build(), BodyHandlers.discarding())
            .statusCode();
    if (status != OK) {
      throw unexpected(path, String.valueOf(status));
    }
  }

  /** The ids of all events of a club. */
  Set<String> eventsOf(String club, String key) throws IOException, InterruptedException {
    Set<String> ids = new HashSet<>();
    String page = club + "/events?after=0&limit=1000";
    while (true) {
      HttpResponse<String> answer = client.send(asking(page, key).build(), BodyHandlers.ofString());
      if (answer.statusCode() != OK) {
        throw unexpected(page, answer.statusCode() + " " + answer.body());
      }
      JsonNode events = JSON.readTree(answer.body()).path("events");
      Matcher next = NEXT.matcher(answer.headers().firstValue("Link").orElse(""));
      if (events.isEmpty() || !next.find()) {
        return ids;
      }
      events.forEach(event -> ids.add(event.path("id").textValue()));
      page = next.group(1);
    }
  }

  @Override
  public void close() {
    client.close();
  }

  private HttpRequest.Builder asking(String path, String key) {
    return HttpRequest.newBuilder(service.resolve(path))
        .timeout(ANSWER_MAX)
        .header("Authorization", "Bearer " + key);
  }

  private static IOException unexpected(String path, String answer) {
    return new IOException(path + " was answered " + answer);
  }

  private static String written(JsonNode body) {
    try {
      return JSON.writeValueAsString(body);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree can be written", e);
    }
  }
}
