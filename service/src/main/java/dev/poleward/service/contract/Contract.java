package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Judges what comes in by the contract, in full and before anything is done with it. Immutable;
 * safe for use by many threads.
 */
public final class Contract {

  /** Says of an operation which type of event its flat body is. */
  private static final String EVENT = "x-poleward-event";

  private static final String REFERENCE = "#/components/schemas/";

  private final ContractFiles files;
  private final Components components;
  private final EventJudge events;
  private final StrictJson json = new StrictJson();

  private Contract(ContractFiles files) {
    this.files = files;
    JsonNode openapi = files.openapiTree();
    this.components = new Components(openapi);
    this.events = new EventJudge(components);
    requests(openapi).forEach(components::judge);
  }

  /**
   * Reads the contract from the classpath and compiles its schemas. Takes a while; once at the
   * start is enough.
   *
   * @throws IllegalStateException when it is not on the classpath
   */
  public static Contract load() {
    return new Contract(ContractFiles.load());
  }

  /** The components that are whole bodies of requests, but for events, which are judged as such. */
  private static Set<String> requests(JsonNode openapi) {
    Set<String> names = new TreeSet<>();
    for (JsonNode path : openapi.path("paths")) {
      for (JsonNode operation : path) {
        if (operation.has(EVENT)) {
          continue;
        }
        for (JsonNode form : operation.path("requestBody").path("content")) {
          String reference = form.path("schema").path("$ref").asText();
          if (reference.startsWith(REFERENCE)) {
            names.add(reference.substring(REFERENCE.length()));
          }
        }
      }
    }
    // An event is judged in two steps, which tells its faults more plainly.
    names.remove("SentEvent");
    return names;
  }

  /** The HTTP surface, to be served as it is: YAML. */
  public String openapi() {
    return files.openapi();
  }

  /** The journal's topics, to be served as they are: YAML. */
  public String asyncapi() {
    return files.asyncapi();
  }

  /**
   * Reads a body: UTF-8, no member twice, nothing after the end, 64 levels at most, no half of a
   * surrogate pair, finite numbers.
   *
   * @param body no longer than the caller's own limit
   */
  public ParsedBody parse(byte[] body) {
    return json.parse(body);
  }

  /**
   * Judges an event in its structured form.
   *
   * @param prefix where the event lies in its body: empty, or {@code /1} in a batch
   */
  public Judgement judgeEvent(String prefix, JsonNode tree) {
    return events.judge(prefix, tree, List.of());
  }

  /**
   * Judges an event in binary mode; the pointers speak of its structured form.
   *
   * @param headers all headers by their lower-case names
   * @param data the body
   */
  public Judgement judgeBinaryEvent(Map<String, String> headers, JsonNode data) {
    BinaryEvent event = BinaryEvent.of(headers, data);
    return events.judge("", event.tree(), event.faults());
  }

  /**
   * Judges an event that came as the flat body of a resource; the pointers speak of that body. What
   * it lacks of attributes, {@code specversion} and {@code source}, is added.
   *
   * @param type of the event; one that clients may send
   * @param inPath members of its data that the path says, by name
   */
  public Judgement judgeFlatEvent(String type, Map<String, String> inPath, JsonNode tree) {
    if (!(tree instanceof ObjectNode body)) {
      return new Judgement.Refused(
          List.of(new Fault("", "must be an object: id, time, and what it says")));
    }
    int least = components.schema(EventTypes.component(type)).path("minProperties").asInt();
    FlatEvent event = FlatEvent.of(type, inPath, least, body);
    return switch (events.judge("", event.tree(), event.faults())) {
      case Judgement.Accepted accepted -> accepted;
      case Judgement.Refused refused ->
          new Judgement.Refused(refused.faults().stream().map(FlatEvent::inBody).toList());
    };
  }

  /**
   * Judges the body of a route of its own.
   *
   * @param component name of its schema in the contract, as {@code RegisterClub}
   * @return what is wrong, 100 faults at most; empty when the body is in order
   * @throws IllegalArgumentException when the contract has no such schema
   */
  public List<Fault> judge(String component, JsonNode tree) {
    Findings findings = new Findings("");
    if (Bulk.within(tree, findings)) {
      components.judge(component).judge(tree, "", findings);
      if (tree instanceof ObjectNode body) {
        EventRules.judgeRequest(component, body, findings);
      }
    }
    return findings.faults();
  }
}
