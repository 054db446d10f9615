package dev.poleward.service.demo;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** What is told of the club, as events under ids of their own. For one thread. */
final class Telling {

  private final List<ObjectNode> events = new ArrayList<>();

  /** Data without members yet. */
  static ObjectNode data() {
    return JsonNodeFactory.instance.objectNode();
  }

  /** Tells one event more, and gives back its id. */
  String tell(String source, String type, OffsetDateTime time, ObjectNode data) {
    String id = "demo-%05d".formatted(events.size() + 1);
    ObjectNode event =
        data()
            .put("specversion", "1.0")
            .put("id", id)
            .put("source", source)
            .put("type", type)
            .put("time", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time));
    event.set("data", data);
    events.add(event);
    return id;
  }

  /** All of it, as it was told. */
  List<ObjectNode> events() {
    return List.copyOf(events);
  }
}
