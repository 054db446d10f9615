package dev.poleward.domain.event;

import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What CloudEvents 1.0 says around an event's data.
 *
 * @param id unique within the club, whatever the source
 * @param source who says so, a URI reference
 * @param time when it happened, said by the client
 * @param subject what it is about, if said
 * @param dataschema schema of the data, if said
 * @param extensions further attributes, kept as sent: text, whole numbers or truth values
 */
public record Envelope(
    String id,
    String source,
    OffsetDateTime time,
    @Nullable String subject,
    @Nullable String dataschema,
    Map<String, Object> extensions) {

  /** Keeps the extensions from changing, ascending by name wherever they are written. */
  public Envelope {
    extensions =
        extensions.isEmpty() ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(extensions));
  }
}
