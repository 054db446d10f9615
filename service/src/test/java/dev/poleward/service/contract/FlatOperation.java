package dev.poleward.service.contract;

import static dev.poleward.service.contract.PlainContract.PLAIN;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * An operation of the contract whose body is an event, flat.
 *
 * @param path as {@code /v1/clubs/{club}/dogs}
 * @param type of the event
 * @param component name of the body's schema
 * @param operation all that the contract says of it
 */
record FlatOperation(String path, String type, String component, JsonNode operation) {

  private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

  static List<FlatOperation> all() {
    List<FlatOperation> all = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : PLAIN.openapi().path("paths").properties()) {
      JsonNode post = path.getValue().path("post");
      if (post.has("x-poleward-event")) {
        String reference =
            post.at("/requestBody/content/application~1json/schema/$ref").textValue();
        all.add(
            new FlatOperation(
                path.getKey(),
                post.path("x-poleward-event").textValue(),
                reference.substring(reference.lastIndexOf('/') + 1),
                post));
      }
    }
    return all;
  }

  /** The members of the data that the path says. */
  List<String> places() {
    return PLACE
        .matcher(path)
        .results()
        .map(place -> place.group(1))
        .filter(place -> !place.equals("club"))
        .toList();
  }

  /** What stands in the open places when this is the event's data. */
  Map<String, String> inPath(JsonNode data) {
    Map<String, String> inPath = new HashMap<>();
    places().forEach(place -> inPath.put(place, data.path(place).textValue()));
    return inPath;
  }

  /** The body that says the same as the event, but for what the path says. */
  ObjectNode body(JsonNode event) {
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    for (String attribute : List.of("id", "time", "source")) {
      if (event.has(attribute)) {
        body.set(attribute, event.get(attribute));
      }
    }
    event.path("data").properties().forEach(each -> body.set(each.getKey(), each.getValue()));
    return body.remove(places());
  }
}
