package dev.poleward.service.http;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;

/** Timings and refusals of requests. Safe for use by many threads. */
final class Metrics {

  private final MeterRegistry registry;

  Metrics(MeterRegistry registry) {
    this.registry = registry;
  }

  /**
   * Notes an answer.
   *
   * @param route the path with its parameters unfilled, so that there are few of them; {@code none}
   *     where the request leads nowhere
   */
  void answered(String method, String route, int status, Duration took) {
    Timer.builder("http.server.requests")
        .description("Time from the first byte of a request to the last of its answer")
        .tag("method", method)
        .tag("route", route)
        .tag("status", Integer.toString(status))
        .publishPercentileHistogram()
        .minimumExpectedValue(Duration.ofNanos(100_000))
        .maximumExpectedValue(Duration.ofSeconds(30))
        .register(registry)
        .record(took);
  }

  /** Notes a refusal. */
  void refused(String reason) {
    Counter.builder("poleward.refusals")
        .description("Requests refused, by problem type")
        .tag("reason", reason)
        .register(registry)
        .increment();
  }
}
