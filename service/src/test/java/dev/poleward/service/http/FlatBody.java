package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.Club;
import dev.poleward.service.http.ResourceDoors.Door;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * An event as a client of its resource writes it.
 *
 * @param below the path below the club's
 */
record FlatBody(String below, ObjectNode body) {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** The same as an event in its structured form. */
  static FlatBody of(Door door, JsonNode event) {
    ObjectNode body = event.path("data").deepCopy();
    String below = door.below();
    for (Map.Entry<String, JsonNode> member : event.path("data").properties()) {
      String place = "{" + member.getKey() + "}";
      if (below.contains(place)) {
        below = below.replace(place, member.getValue().asText());
        body.remove(member.getKey());
      }
    }
    body.set("id", event.get("id"));
    body.set("time", event.get("time"));
    body.set("source", event.get("source"));
    return new FlatBody(below, body);
  }

  /** The door of a type; empty where there is none. */
  static Optional<Door> door(String type) {
    return ResourceDoors.ALL.stream().filter(door -> door.type().equals(type)).findFirst();
  }

  /** The example of a door's type, an event in its structured form. */
  static ObjectNode example(Door door) {
    try {
      return (ObjectNode)
          JSON.readTree(
              Files.readAllBytes(Path.of("../contracts/examples", door.type() + ".json")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode tree(String event) {
    try {
      return JSON.readTree(event);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Response post(Club club) {
    return post(club, body.toString());
  }

  /** Sends another body to the same path. */
  Response post(Club club, String other) {
    return club.given().contentType("application/json").body(other).post(club.path(below));
  }
}
