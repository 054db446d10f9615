package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.Envelope;
import dev.poleward.service.codec.Documents;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.projection.Reading.Fate;
import dev.poleward.service.projection.Reading.FeedEvent;
import java.util.function.Predicate;

/** Recorded events as CloudEvents. Immutable; safe for use by many threads. */
final class FeedShape {

  private final EventCodec codec;

  FeedShape(EventCodec codec) {
    this.codec = codec;
  }

  ObjectNode of(PersonalView personal, FeedEvent event) {
    Envelope envelope = event.envelope();
    ObjectNode data = codec.encode(event.event());
    // The digest of a key's secret is for the door, not for readers.
    data.remove("secretHash");
    ObjectNode members = personal.members(envelope.id(), event.sealed());
    Writing out =
        new Writing()
            .put("specversion", "1.0")
            .put("id", envelope.id())
            .put("source", envelope.source())
            .put("type", event.type())
            .put("time", envelope.time())
            .put("subject", envelope.subject())
            .put("datacontenttype", Answer.JSON)
            .put("dataschema", envelope.dataschema())
            .putPrinted("recordedtime", event.recorded());
    ObjectNode shape = out.done();
    shape.setAll(Documents.write(envelope.extensions()));
    if (event.sealed() != null && members.isEmpty()) {
      shape.put("forgotten", true);
    }
    data.setAll(members);
    shape.set("data", data);
    return shape;
  }

  /** A fate without the contradictions that speak of other dogs. */
  Fate onlyOf(Fate fate, Predicate<String> visible) {
    return new Fate(
        fate.event(),
        fate.repeated(),
        fate.contradicted(),
        fate.contradictions().stream()
            .filter(each -> names(JsonText.object(each.data()), visible))
            .toList());
  }

  /** Whether an event names a dog, and only one that is visible. */
  boolean concerns(FeedEvent event, Predicate<String> visible) {
    return names(codec.encode(event.event()), visible);
  }

  private static boolean names(ObjectNode data, Predicate<String> visible) {
    JsonNode dog = data.get("dog");
    return dog != null && visible.test(dog.asText());
  }
}
