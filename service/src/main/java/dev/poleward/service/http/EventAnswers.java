package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.service.codec.Writing;
import java.util.List;

/** What senders of events are answered. */
final class EventAnswers {

  private EventAnswers() {}

  static ObjectNode recorded(String id, List<EntityRef> waitsFor) {
    return new Writing()
        .put("id", id)
        .put("status", waitsFor.isEmpty() ? "applied" : "waiting")
        .done()
        .set("waitsFor", waitsFor(waitsFor));
  }

  static ObjectNode repeated(String id) {
    return new Writing().put("id", id).put("status", "repeated").done();
  }

  static ObjectNode pending(String id) {
    return new Writing().put("id", id).put("status", "pending").done();
  }

  static ArrayNode waitsFor(List<EntityRef> references) {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    references.forEach(
        reference ->
            array
                .addObject()
                .put("kind", Writing.wireName(reference.kind()))
                .put("id", reference.id()));
    return array;
  }

  /** Where an event's fate is told. */
  static String fateOf(String club, String id) {
    return "/v1/clubs/" + club + "/events/" + id;
  }
}
