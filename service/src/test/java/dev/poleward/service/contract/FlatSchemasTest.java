package dev.poleward.service.contract;

import static dev.poleward.service.contract.PlainContract.PLAIN;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.access.Scope;
import dev.poleward.service.access.ScopeOfType;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A flat body and the data of its event have the same members, with the same schemas. */
class FlatSchemasTest {

  private static final List<String> ATTRIBUTES = List.of("id", "time", "source");

  static List<FlatOperation> operations() {
    return FlatOperation.all();
  }

  @ParameterizedTest
  @MethodSource("operations")
  void membersAreThoseOfTheDataButForWhatThePathSays(FlatOperation operation) {
    ObjectNode flat = PLAIN.component(operation.component()).path("properties").deepCopy();
    ObjectNode data =
        PLAIN.component(EventTypes.component(operation.type())).path("properties").deepCopy();
    JsonNode attributes = PLAIN.component("Event").path("properties");

    assertThat(flat.fieldNames()).toIterable().containsAll(ATTRIBUTES);
    assertThat(data.fieldNames()).toIterable().doesNotContainAnyElementsOf(ATTRIBUTES);
    assertThat(data.fieldNames()).toIterable().containsAll(operation.places());
    ATTRIBUTES.forEach(name -> assertThat(flat.get(name)).isEqualTo(attributes.get(name)));
    assertThat(flat.remove(ATTRIBUTES)).isEqualTo(data.remove(operation.places()));
  }

  @ParameterizedTest
  @MethodSource("operations")
  void whatIsRequiredIsWhatTheDataRequires(FlatOperation operation) {
    JsonNode flat = PLAIN.component(operation.component());
    JsonNode data = PLAIN.component(EventTypes.component(operation.type()));
    Set<String> required = texts(data.path("required"));
    required.removeAll(operation.places());
    required.addAll(List.of("id", "time"));

    assertThat(texts(flat.path("required"))).isEqualTo(required);
    assertThat(flat.path("additionalProperties").isBoolean()).isTrue();
    assertThat(flat.path("additionalProperties").booleanValue()).isFalse();
    if (data.has("minProperties")) {
      assertThat(flat.path("minProperties").intValue())
          .isEqualTo(data.path("minProperties").intValue() - operation.places().size() + 2);
    }
  }

  /** A keyword that neither of the other tests knows would be passed over by them. */
  @ParameterizedTest
  @MethodSource("operations")
  void nothingElseIsAskedOfTheBody(FlatOperation operation) {
    Set<String> known =
        Set.of(
            "title",
            "description",
            "type",
            "additionalProperties",
            "minProperties",
            "required",
            "properties");
    for (String component :
        List.of(operation.component(), EventTypes.component(operation.type()))) {
      assertThat(PLAIN.component(component).fieldNames()).toIterable().allMatch(known::contains);
    }
  }

  @ParameterizedTest
  @MethodSource("operations")
  void theScopesAreThoseOfTheType(FlatOperation operation) {
    assertThat(ScopeOfType.of(operation.type()))
        .isInstanceOfSatisfying(
            ScopeOfType.AnyOf.class,
            any ->
                assertThat(texts(operation.operation().path("x-poleward-scopes")))
                    .isEqualTo(any.scopes().stream().map(Scope::wire).collect(Collectors.toSet())));
  }

  @ParameterizedTest
  @MethodSource("operations")
  void theExampleIsInOrder(FlatOperation operation) {
    JsonNode example = operation.operation().at("/requestBody/content/application~1json/example");

    assertThat(PLAIN.accepts(operation.component(), example)).isTrue();
    assertThat(
            Events.CONTRACT.judgeFlatEvent(
                operation.type(),
                operation.places().stream().collect(Collectors.toMap(each -> each, _ -> "x")),
                example))
        .isInstanceOf(Judgement.Accepted.class);
  }

  private static Set<String> texts(JsonNode array) {
    Set<String> texts = new TreeSet<>();
    array.forEach(each -> texts.add(each.textValue()));
    return texts;
  }
}
