package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** One event of each type that clients may send, there and back. */
@ExtendWith(SharedService.class)
class ExampleEventsTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int CLIENT_TYPES = 29;

  private static final Set<String> OF_THE_SERVICE =
      Set.of(
          "club.registered.v1",
          "access-key.issued.v1",
          "access-key.revoked.v1",
          "person.forgotten.v1",
          "plan.issued.v1");

  private static final Map<String, List<String>> PERSONAL =
      Map.of(
          "handler.registered.v1", List.of("name", "email"),
          "rep.logged.v1", List.of("note"),
          "rep.amended.v1", List.of("note"));

  private static final List<JsonNode> EXAMPLES = new ArrayList<>();

  private final Club club;

  ExampleEventsTest(Club club) {
    this.club = club;
  }

  @BeforeAll
  static void read() throws IOException {
    EXAMPLES.clear();
    try (Stream<Path> files = Files.list(Path.of("../contracts/examples"))) {
      for (Path file : files.sorted().toList()) {
        JsonNode example = JSON.readTree(Files.readAllBytes(file));
        if (!OF_THE_SERVICE.contains(example.path("type").textValue())) {
          EXAMPLES.add(example);
        }
      }
    }
    assertThat(EXAMPLES).hasSize(CLIENT_TYPES);
  }

  private static List<String> written(List<JsonNode> events) {
    return events.stream().map(JsonNode::toString).toList();
  }

  @Test
  void eachIsAcceptedAloneAndComesBackEqualInTheFeed() throws IOException {
    for (JsonNode example : EXAMPLES) {
      assertThat(club.send(example.toString()).statusCode()).as("%s", example).isEqualTo(201);
    }

    JsonNode feed = JSON.readTree(club.get("/events?after=2").asString());
    assertThat(feed.path("position").intValue()).isEqualTo(2 + CLIENT_TYPES);
    for (int i = 0; i < CLIENT_TYPES; i++) {
      JsonNode sent = EXAMPLES.get(i);
      JsonNode back = feed.path("events").path(i);
      assertThat(back.path("id")).isEqualTo(sent.path("id"));
      assertThat(back.path("type")).isEqualTo(sent.path("type"));
      assertThat(back.path("source")).isEqualTo(sent.path("source"));
      assertThat(OffsetDateTime.parse(back.path("time").textValue()))
          .isEqualTo(OffsetDateTime.parse(sent.path("time").textValue()));
      assertThat(canonical(back.path("data"))).isEqualTo(canonical(sent.path("data")));
    }
  }

  @Test
  void theDigestIsThatOfTheContract() throws IOException {
    club.sendAll(written(EXAMPLES)).then().statusCode(200);

    JsonNode digest = JSON.readTree(club.get("/digest").asString());
    List<String> lines = new ArrayList<>();
    for (JsonNode example : EXAMPLES) {
      if (!example.path("type").textValue().startsWith("club.")) {
        lines.add(line(example));
      }
    }
    assertThat(digest.path("events").intValue()).isEqualTo(lines.size());
    assertThat(digest.path("digest").textValue()).isEqualTo(sha256(lines));
  }

  @Test
  void theOrderIsOfNoAccount(Club other) {
    List<JsonNode> shuffled = new ArrayList<>(EXAMPLES);
    Collections.shuffle(shuffled, new Random(7));

    club.sendAll(written(EXAMPLES)).then().statusCode(200);
    other.sendAll(written(shuffled)).then().statusCode(200);

    for (String read :
        List.of(
            "/digest",
            "/waiting",
            "/dogs",
            "/handlers",
            "/sessions",
            "/programmes",
            "/dogs/juniper/reps",
            "/sessions/s-1",
            "/classes/monday-beginners",
            "/devices")) {
      assertThat(other.get(read).asString()).as(read).isEqualTo(club.get(read).asString());
    }
  }

  /** As the contract tells it, written by somebody who has not seen how the service does it. */
  private static String line(JsonNode event) throws IOException {
    JsonNode data = event.path("data").deepCopy();
    String type = event.path("type").textValue();
    ((com.fasterxml.jackson.databind.node.ObjectNode) data)
        .remove(PERSONAL.getOrDefault(type, List.of()));
    return "%s %s %s %s%n"
        .formatted(
            event.path("id").textValue(),
            type,
            OffsetDateTime.parse(event.path("time").textValue()).toInstant(),
            canonical(data))
        .replace("\r", "");
  }

  private static String canonical(JsonNode data) throws IOException {
    return new JsonCanonicalizer(data.toString()).getEncodedString();
  }

  private static String sha256(List<String> lines) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      lines.stream().sorted().forEach(each -> digest.update(each.getBytes(StandardCharsets.UTF_8)));
      return "sha256:" + HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
