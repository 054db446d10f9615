package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.poleward.service.contract.Contract;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.function.BooleanSupplier;

/** How the service is, and what it offers. Open to everybody. Safe for use by many threads. */
final class ServiceRoutes {

  static final String YAML = "application/yaml";
  static final String TEXT = "text/plain";
  private static final String PROMETHEUS = TEXT + "; version=0.0.4; charset=utf-8";

  private final Contract contract;
  private final PrometheusMeterRegistry metrics;
  private final BooleanSupplier ready;

  ServiceRoutes(Contract contract, PrometheusMeterRegistry metrics, BooleanSupplier ready) {
    this.contract = contract;
    this.metrics = metrics;
    this.ready = ready;
  }

  Answer live(Call call) {
    return status("live");
  }

  Answer ready(Call call) {
    return ready.getAsBoolean()
        ? status("ready")
        : call.refused(
            Problem.later(
                ProblemKind.NOT_READY, "It is reading its journal.", Duration.ofSeconds(1)));
  }

  private static Answer status(String status) {
    return Answer.json(200, JsonNodeFactory.instance.objectNode().put("status", status));
  }

  Answer metrics(Call call) {
    return Answer.text(PROMETHEUS, metrics.scrape());
  }

  Answer openapi(Call call) {
    return Answer.text(YAML, contract.openapi());
  }

  Answer asyncapi(Call call) {
    return Answer.text(YAML, contract.asyncapi());
  }
}
