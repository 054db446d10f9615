package dev.poleward.service.contract;

import static dev.poleward.service.contract.Events.CONTRACT;
import static dev.poleward.service.contract.Events.accepted;
import static dev.poleward.service.contract.Events.faults;
import static dev.poleward.service.contract.PlainContract.PLAIN;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.codec.Upcasters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every type has its schema, its example and its codec, and each of these its type. */
class CoverageTest {

  private static final Path EXAMPLES = Path.of("..", "contracts", "examples");
  private static final String SUFFIX = ".json";

  private final EventCodec codec = new EventCodec(Upcasters.NONE);

  static Set<String> types() {
    return EventCodec.types();
  }

  static Set<String> typesOfClients() {
    Set<String> types = new TreeSet<>();
    PLAIN.component("EventType").path("enum").forEach(t -> types.add(t.asText()));
    return types;
  }

  static Set<String> typesOfTheService() {
    Set<String> types = new TreeSet<>(types());
    types.removeAll(typesOfClients());
    return types;
  }

  @Test
  void codecAndContractKnowTheSameTypes() {
    Set<String> recorded = new TreeSet<>();
    PLAIN.component("RecordedEventType").path("enum").forEach(t -> recorded.add(t.asText()));
    Set<String> components = new TreeSet<>();
    for (JsonNode component : PLAIN.openapi().at("/components/schemas")) {
      String title = component.path("title").asText();
      if (title.matches("[a-z.-]+\\.v\\d+")) {
        components.add(title);
      }
    }

    assertThat(recorded).isEqualTo(types());
    assertThat(components).isEqualTo(types());
  }

  @Test
  void everyTypeHasAnExampleAndEveryExampleAType() throws IOException {
    try (var files = Files.list(EXAMPLES)) {
      assertThat(
              files
                  .map(file -> file.getFileName().toString())
                  .map(name -> name.substring(0, name.length() - SUFFIX.length()))
                  .collect(Collectors.toSet()))
          .isEqualTo(types());
    }
  }

  @ParameterizedTest
  @MethodSource("types")
  void componentsAreNamedAfterTheirTypes(String type) {
    assertThat(PLAIN.component(EventTypes.component(type)).path("title").asText()).isEqualTo(type);
  }

  @ParameterizedTest
  @MethodSource("typesOfClients")
  void examplesOfClientsAreAccepted(String type) throws IOException {
    assertThat(accepted(CONTRACT.judgeEvent("", example(type))).type()).isEqualTo(type);
  }

  @ParameterizedTest
  @MethodSource("typesOfTheService")
  void examplesOfTheServiceAreRefusedForTheirType(String type) throws IOException {
    assertThat(faults(CONTRACT.judgeEvent("", example(type))))
        .singleElement()
        .satisfies(fault -> assertThat(fault.pointer()).isEqualTo("/type"))
        .satisfies(fault -> assertThat(fault.detail()).contains("through"));
  }

  @ParameterizedTest
  @MethodSource("types")
  void examplesAreRecordedEventsAndGoThroughTheCodec(String type) throws IOException {
    ObjectNode example = (ObjectNode) example(type);
    ObjectNode data = (ObjectNode) example.get("data");
    if (type.equals("access-key.issued.v1")) {
      // In the journal always, in answers never.
      data.put("secretHash", "sha256:" + "0123456789abcdef".repeat(4));
    }
    TrainingEvent event = Objects.requireNonNull(codec.decode(type, data));
    data.remove(personal(type));

    assertThat(
            PLAIN.accepts(EventTypes.component(type), example.get("data"))
                || !personal(type).isEmpty())
        .isTrue();
    assertThat(CanonicalJson.of(codec.encode(event))).isEqualTo(CanonicalJson.of(data));
  }

  @Test
  void everyPatternOfARequestHasItsSentence() {
    Set<String> patterns = new TreeSet<>();
    for (String type : types()) {
      gather(bare(EventTypes.component(type)), patterns);
    }
    for (String component : List.of("Event", "RegisterClub", "IssueAccessKey")) {
      gather(bare(component), patterns);
    }
    // Digests of secrets come from the service alone.
    patterns.remove("^sha256:[0-9a-f]{64}$");

    assertThat(patterns)
        .isNotEmpty()
        .allSatisfy(
            pattern ->
                assertThat(ExpectedForm.ofPattern(pattern)).doesNotStartWith("must look like"));
  }

  @Test
  void theFilesAreThereToBeServed() {
    assertThat(CONTRACT.openapi()).startsWith("openapi: 3.1.0");
    assertThat(CONTRACT.asyncapi()).startsWith("asyncapi: 3.0.0");
  }

  private JsonNode bare(String component) {
    return BareSchema.of(PLAIN.component(component), PLAIN.openapi());
  }

  private static void gather(JsonNode schema, Set<String> patterns) {
    if (schema.path("pattern").isTextual()) {
      patterns.add(schema.path("pattern").asText());
    }
    schema.forEach(each -> gather(each, patterns));
  }

  private List<String> personal(String type) {
    List<String> names = new ArrayList<>();
    PLAIN.component(EventTypes.component(type)).path("properties").properties().stream()
        .filter(each -> each.getValue().path("x-poleward-personal").booleanValue())
        .forEach(each -> names.add(each.getKey()));
    return names;
  }

  private static JsonNode example(String type) throws IOException {
    return Events.tree(Files.readString(EXAMPLES.resolve(type + SUFFIX)));
  }
}
