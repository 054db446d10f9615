package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import dev.poleward.service.http.ResourceDoors.Door;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** What the contract says of doors for one resource. */
final class FlatContract {

  static final JsonNode OPENAPI = read();

  private FlatContract() {}

  private static JsonNode read() {
    try {
      return new YAMLMapper().readTree(Files.readAllBytes(Path.of("../contracts/openapi.yaml")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The types of events by the paths of their doors. */
  static Map<String, String> doors() {
    Map<String, String> doors = new TreeMap<>();
    for (Map.Entry<String, JsonNode> path : OPENAPI.path("paths").properties()) {
      JsonNode type = path.getValue().at("/post/x-poleward-event");
      if (type.isTextual()) {
        doors.put(path.getKey(), type.textValue());
      }
    }
    return doors;
  }

  /** The scopes that open a route, as {@code GET /v1/clubs/{club}}. */
  static JsonNode scopes(String route) {
    String[] words = route.split(" ", 2);
    return OPENAPI
        .path("paths")
        .path(words[1])
        .path(words[0].toLowerCase(java.util.Locale.ROOT))
        .path("x-poleward-scopes");
  }

  static JsonNode scopes(Door door) {
    return scopes("POST " + door.path());
  }

  /** The members that a door's body must have. */
  static JsonNode required(Door door) {
    String reference =
        OPENAPI
            .path("paths")
            .path(door.path())
            .at("/post/requestBody/content/application~1json/schema/$ref")
            .textValue();
    return OPENAPI.at(reference.substring(1)).path("required");
  }
}
