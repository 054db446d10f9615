package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.history.RecordedEvent;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.codec.Upcasters;
import java.time.format.DateTimeFormatter;

/** Generated events as clients write them. */
final class GeneratedEvents {

  private static final EventCodec CODEC = new EventCodec(Upcasters.NONE);

  private GeneratedEvents() {}

  /** The event in its structured form, with personal members where it has some. */
  static String written(RecordedEvent event) {
    ObjectNode data = CODEC.encode(event.event());
    String type = EventCodec.typeOf(event.event());
    if (type.equals("handler.registered.v1")) {
      data.put("name", "Name in " + event.id());
    } else if (event.sealed() != null || (type.equals("rep.amended.v1") && data.size() == 1)) {
      data.put("note", "Note in " + event.id());
    }
    ObjectNode written =
        JsonNodeFactory.instance
            .objectNode()
            .put("specversion", "1.0")
            .put("id", event.id())
            .put("source", event.envelope().source())
            .put("type", type)
            .put("time", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(event.envelope().time()))
            .put("recordedtime", event.recorded().toString());
    return written.set("data", data).toString();
  }
}
