package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.Envelope;
import dev.poleward.service.contract.Findings.Weight;
import dev.poleward.service.contract.Judgement.Accepted;
import dev.poleward.service.contract.Judgement.Refused;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Judges events in their structured form: the envelope, the data by its type, then the rules that
 * no schema can say. Immutable; safe for use by many threads.
 */
final class EventJudge {

  private static final String ROOT = "";
  private static final String DATA = "/data";
  private static final String TYPE = "/type";
  private static final Set<String> ATTRIBUTES =
      Set.of(
          "specversion",
          "id",
          "source",
          "type",
          "time",
          "subject",
          "datacontenttype",
          "dataschema",
          "recordedtime",
          "forgotten",
          "data");

  private final SchemaJudge envelope;
  private final EventTypes types;

  EventJudge(Components components) {
    this.envelope = components.judge("Event");
    this.types = new EventTypes(components);
  }

  /**
   * Judges an event.
   *
   * @param known what was found wrong with it before
   */
  Judgement judge(String prefix, JsonNode tree, List<Fault> known) {
    Findings findings = new Findings(prefix);
    known.forEach(fault -> findings.add(fault.pointer(), fault.detail(), Weight.KIND));
    if (!(tree instanceof ObjectNode event)) {
      findings.add(ROOT, "must be an object, a CloudEvent in its JSON form", Weight.KIND);
      return new Refused(findings.faults());
    }
    String name = event.path("type").textValue();
    EventTypes.Type type = types.find(name);
    if (name != null && type == null) {
      findings.add(TYPE, EventTypes.refusal(name), Weight.KIND);
    }
    if (event.has("data_base64")) {
      findings.add("/data_base64", "is not read here: data is JSON, in data", Weight.KIND);
    }
    judgeForm(event, type, findings);
    if (!findings.isEmpty() || type == null) {
      return new Refused(findings.faults());
    }
    return new Accepted(sent(event, type));
  }

  private void judgeForm(ObjectNode event, EventTypes.@Nullable Type type, Findings findings) {
    JsonNode data = event.path("data");
    if (!Bulk.within(event, findings)) {
      return;
    }
    envelope.judge(event, ROOT, findings);
    if (type != null && data instanceof ObjectNode members) {
      judgeOf(type, event, members).judge(members, DATA, findings);
      EventRules.judge(type.name(), members, DATA, findings);
    }
  }

  private static SchemaJudge judgeOf(EventTypes.Type type, ObjectNode event, ObjectNode data) {
    SchemaJudge forgotten = type.forgotten();
    return forgotten != null && isForgotten(event) && hasOnly(data, type.leftovers())
        ? forgotten
        : type.data();
  }

  private static boolean isForgotten(ObjectNode event) {
    return event.path("forgotten").booleanValue();
  }

  private static boolean hasOnly(ObjectNode data, JsonNode names) {
    for (Iterator<String> each = data.fieldNames(); each.hasNext(); ) {
      if (!names.has(each.next())) {
        return false;
      }
    }
    return true;
  }

  private static SentEvent sent(ObjectNode event, EventTypes.Type type) {
    String recordedTime = event.path("recordedtime").textValue();
    return new SentEvent(
        new Envelope(
            event.path("id").asText(),
            event.path("source").asText(),
            TimeText.read(event.path("time").asText()),
            event.path("subject").textValue(),
            event.path("dataschema").textValue(),
            extensions(event)),
        type.name(),
        (ObjectNode) event.path("data"),
        recordedTime == null ? null : TimeText.read(recordedTime).toInstant(),
        isForgotten(event));
  }

  private static Map<String, Object> extensions(ObjectNode event) {
    Map<String, Object> extensions = new HashMap<>();
    for (Map.Entry<String, JsonNode> each : event.properties()) {
      JsonNode value = each.getValue();
      if (ATTRIBUTES.contains(each.getKey()) || value.isNull()) {
        continue;
      }
      if (value.isTextual()) {
        extensions.put(each.getKey(), value.textValue());
      } else if (value.isBoolean()) {
        extensions.put(each.getKey(), value.booleanValue());
      } else {
        extensions.put(each.getKey(), value.longValue());
      }
    }
    return extensions;
  }
}
