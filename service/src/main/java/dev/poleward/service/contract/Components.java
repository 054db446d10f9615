package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.Dialects;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The schemas below {@code components} of the HTTP surface, by name. Safe for use by many threads;
 * what was compiled once is not compiled again.
 */
final class Components {

  private static final String SCHEMAS = "/components/schemas";

  private final JsonNode openapi;
  private final SchemaRegistry registry;
  private final Map<String, SchemaJudge> judges = new ConcurrentHashMap<>();

  Components(JsonNode openapi) {
    this.openapi = openapi;
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder()
            .formatAssertionsEnabled(true)
            .regularExpressionFactory(new Patterns())
            .build();
    this.registry =
        SchemaRegistry.withDefaultDialect(
            Dialects.getOpenApi31(), builder -> builder.schemaRegistryConfig(config));
  }

  boolean has(String name) {
    return openapi.at(SCHEMAS).has(name);
  }

  /** The schema itself; missing when there is none. */
  JsonNode schema(String name) {
    return openapi.at(SCHEMAS).path(name);
  }

  /**
   * The judge of a component.
   *
   * @throws IllegalArgumentException when there is no such component
   */
  SchemaJudge judge(String name) {
    return judges.computeIfAbsent(name, this::compiled);
  }

  private SchemaJudge compiled(String name) {
    if (!has(name)) {
      throw new IllegalArgumentException("the contract has no component " + name);
    }
    JsonNode bare = BareSchema.of(schema(name), openapi);
    Schema schema = registry.getSchema(SchemaLocation.of("urn:poleward:" + name), bare);
    schema.initializeValidators();
    return new SchemaJudge(schema, bare);
  }
}
