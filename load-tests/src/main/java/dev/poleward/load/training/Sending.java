package dev.poleward.load.training;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.domain.event.Envelope;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.journal.Entry;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * An event as a client sends it.
 *
 * @param id of the event
 * @param type with its version
 * @param time when it happened
 * @param data RFC 8785 form of its data
 */
public record Sending(String id, String type, Instant time, String data) {

  public static final String ONE = "application/cloudevents+json";
  public static final String BATCH = "application/cloudevents-batch+json";

  private static final String SOURCE = "/apps/field-notes";

  /** An event out of a feed, without its recording time. */
  public static Sending ofFeed(JsonNode event) {
    return new Sending(
        event.get("id").asText(),
        event.get("type").asText(),
        OffsetDateTime.parse(event.get("time").asText()).toInstant(),
        CanonicalJson.of(event.get("data")));
  }

  /** It as a structured CloudEvent. */
  public String json() {
    return "{\"specversion\":\"1.0\",\"id\":\""
        + id
        + "\",\"source\":\""
        + SOURCE
        + "\",\"type\":\""
        + type
        + "\",\"time\":\""
        + time
        + "\",\"datacontenttype\":\"application/json\",\"data\":"
        + data
        + "}";
  }

  /** The body of a request with this event. */
  public byte[] body() {
    return json().getBytes(StandardCharsets.UTF_8);
  }

  /** The body of a request with these events. */
  public static byte[] bodyOf(List<Sending> events) {
    return events.stream()
        .map(Sending::json)
        .collect(Collectors.joining(",", "[", "]"))
        .getBytes(StandardCharsets.UTF_8);
  }

  /** It as the service would write it into its journal; for events without personal members. */
  public Entry entry(String club, Instant recorded) {
    Envelope envelope =
        new Envelope(id, SOURCE, time.atOffset(ZoneOffset.UTC), null, null, Map.of());
    return new Entry(club, envelope, type, data, null, recorded, false);
  }
}
