package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.Dialect;
import com.networknt.schema.dialect.Dialects;
import com.networknt.schema.keyword.NonValidationKeyword;
import java.util.HashMap;
import java.util.Map;

/**
 * The contract's schemas as a stranger would use them: whole, and one for an event. For one thread.
 */
final class PlainContract {

  /** Reading the contract takes a while; once is enough for all tests. */
  static final PlainContract PLAIN = new PlainContract();

  private static final String LOCATION = "urn:poleward:plain";

  private final JsonNode openapi = ContractFiles.load().openapiTree();
  private final SchemaRegistry registry;
  private final Map<String, Schema> schemas = new HashMap<>();

  private PlainContract() {
    ObjectNode document = JsonNodeFactory.instance.objectNode();
    document.set("components", openapi.path("components"));
    Dialect dialect =
        Dialect.builder(Dialects.getOpenApi31())
            .keyword(new NonValidationKeyword("components"))
            .keyword(new NonValidationKeyword("x-poleward-personal"))
            .build();
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build();
    String text = document.toString();
    this.registry =
        SchemaRegistry.withDefaultDialect(
            dialect,
            builder -> builder.schemas(Map.of(LOCATION, text)).schemaRegistryConfig(config));
  }

  /** The whole document. */
  JsonNode openapi() {
    return openapi;
  }

  /** A component as written. */
  JsonNode component(String name) {
    return openapi.at("/components/schemas").path(name);
  }

  boolean accepts(String component, JsonNode tree) {
    return schemas.computeIfAbsent(component, this::schema).validate(tree).isEmpty();
  }

  private Schema schema(String component) {
    return registry.getSchema(SchemaLocation.of(LOCATION + "#/components/schemas/" + component));
  }
}
