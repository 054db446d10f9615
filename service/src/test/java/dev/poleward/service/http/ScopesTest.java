package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;

/** The table of types and scopes, as the contract prints it, on each type with each scope. */
@ExtendWith(SharedService.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ScopesTest {

  private static final List<String> RECORDS =
      List.of(
          "session.",
          "setup.changed.",
          "rep.",
          "event.withdrawn.",
          "homework.set.",
          "goal.set.",
          "trial.run.",
          "load.noted.");
  private static final List<String> MANAGED =
      List.of(
          "club.settings-changed.",
          "ground.",
          "handler.",
          "dog.",
          "class.",
          "programme.",
          "device.");

  private final Club club;

  ScopesTest(Club club) {
    this.club = club;
  }

  private static List<JsonNode> examples() throws IOException {
    List<JsonNode> examples = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("../contracts/examples"))) {
      for (Path file : files.sorted().toList()) {
        examples.add(new ObjectMapper().readTree(Files.readAllBytes(file)));
      }
    }
    return examples;
  }

  /** The scopes that open the door to a type: by the contract's table, not by our own code. */
  private static List<String> scopes(String type) {
    if (RECORDS.stream().anyMatch(type::startsWith)) {
      return List.of("records:write");
    }
    if (type.startsWith("timing.")) {
      return List.of("timing:push", "records:write");
    }
    return MANAGED.stream().anyMatch(type::startsWith) ? List.of("club:manage") : List.of();
  }

  @Test
  void eachTypeComesInWithItsScopesAndNoOther() throws IOException {
    Map<String, Club> holders = new TreeMap<>();
    for (String scope : List.of("records:write", "timing:push", "club:manage", "records:read")) {
      holders.put(scope, club.withKey(scope.replace(':', '-'), "'" + scope + "'"));
    }
    int tried = 0;
    for (JsonNode example : examples()) {
      String type = example.path("type").textValue();
      for (Map.Entry<String, Club> holder : holders.entrySet()) {
        ObjectNode event = example.deepCopy();
        event.put("id", "e-" + ++tried).remove("recordedtime");
        int status = holder.getValue().send(event.toString()).statusCode();
        assertThat(status)
            .as("%s with %s", type, holder.getKey())
            .isEqualTo(expected(type, holder.getKey()));
      }
    }
    assertThat(tried).isEqualTo(34 * 4);
  }

  private static int expected(String type, String scope) {
    List<String> opening = scopes(type);
    if (scope.equals("records:read")) {
      return 403;
    }
    if (opening.isEmpty()) {
      return 400;
    }
    return opening.contains(scope) ? 201 : 403;
  }

  /** A pupil's mistake is a pupil's to take back; a registration is not. */
  @Test
  void withdrawingTakesTheScopeOfWhatIsWithdrawn() {
    Club writer = club.withKey("withdrawer", "'records:write'");
    club.record(Said.dog("withdrawn"), Said.rep("r-w", "s-1", "withdrawn", "18:00:00", ""));

    assertThat(writer.send(withdrawal("w-1", "dog-withdrawn")).statusCode()).isEqualTo(403);
    assertThat(writer.send(withdrawal("w-2", "log-r-w")).statusCode()).isEqualTo(201);
    assertThat(writer.send(withdrawal("w-3", "e-never")).statusCode()).isEqualTo(201);
    assertThat(club.send(withdrawal("w-4", "dog-withdrawn")).statusCode()).isEqualTo(201);
  }

  private static String withdrawal(String id, String event) {
    return Said.event(
        id,
        "event.withdrawn.v1",
        Said.at("19:00:00"),
        "{'event':'%s','reason':'a mistake'}".formatted(event));
  }
}
