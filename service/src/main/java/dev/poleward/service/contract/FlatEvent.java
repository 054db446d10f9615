package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An event that came as the flat body of a resource, put into its structured form: id, time and
 * source become attributes, all else and what the path says becomes data.
 *
 * @param tree the structured form
 * @param faults of members that the path says already, pointing into the structured form
 */
record FlatEvent(ObjectNode tree, List<Fault> faults) {

  /** What a body says about its event and not about the resource. */
  static final Set<String> ATTRIBUTES = Set.of("id", "time", "source");

  /** The source of events whose body names none. */
  static final String SOURCE = "/poleward/resources";

  private static final String DATA = "/data";

  /**
   * Puts an event together.
   *
   * @param type of the event
   * @param inPath members of its data that the path says, by name
   * @param least how many members its data has at least, those of the path included
   */
  static FlatEvent of(String type, Map<String, String> inPath, int least, ObjectNode body) {
    ObjectNode tree =
        JsonNodeFactory.instance
            .objectNode()
            .put("specversion", "1.0")
            .put("type", type)
            .put("source", SOURCE);
    ObjectNode data = JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> member : body.properties()) {
      (ATTRIBUTES.contains(member.getKey()) ? tree : data).set(member.getKey(), member.getValue());
    }
    List<Fault> faults = new ArrayList<>();
    inPath.forEach(
        (name, value) -> {
          if (data.has(name)) {
            faults.add(new Fault(Pointers.member(DATA, name), "is said by the path"));
          }
          data.put(name, value);
        });
    if (data.size() < least) {
      faults.add(new Fault(DATA, "must say something besides id, time and source"));
    }
    tree.set("data", data);
    return new FlatEvent(tree, faults);
  }

  /** The fault as seen from the flat body. */
  static Fault inBody(Fault fault) {
    return fault.pointer().equals(DATA) || fault.pointer().startsWith(DATA + "/")
        ? new Fault(fault.pointer().substring(DATA.length()), fault.detail())
        : fault;
  }
}
