package dev.poleward.service.projection;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.record.Sealed;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.journal.Entry;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An entry that is told piece by piece: {@code Sent.event("e-1").of("saltmarsh").entry()}. Where
 * nothing is said, saltmarsh registers the dog juniper.
 */
record Sent(
    String club,
    String id,
    String type,
    String data,
    String time,
    @Nullable Sealed sealed,
    String recorded,
    boolean recordedGiven) {

  static Sent event(String id) {
    return new Sent(
        "saltmarsh",
        id,
        "dog.registered.v1",
        "{'dog':'juniper','callName':'Juniper'}",
        "2026-05-04T18:02:11+01:00",
        null,
        "2026-05-04T17:02:12Z",
        false);
  }

  Sent of(String otherClub) {
    return new Sent(otherClub, id, type, data, time, sealed, recorded, recordedGiven);
  }

  /** Data with single quotes, which read better here; in whatever form JSON allows. */
  Sent says(String otherType, String otherData) {
    return new Sent(club, id, otherType, otherData, time, sealed, recorded, recordedGiven);
  }

  Sent at(String otherTime) {
    return new Sent(club, id, type, data, otherTime, sealed, recorded, recordedGiven);
  }

  Sent with(@Nullable Sealed personal) {
    return new Sent(club, id, type, data, time, personal, recorded, recordedGiven);
  }

  /** Recorded at that time of day, as the node's clock had it. */
  Sent recordedAt(String clock) {
    return new Sent(club, id, type, data, time, sealed, "2026-05-05T" + clock + "Z", false);
  }

  /** Recorded at that time of day, as an import says. */
  Sent recordedGiven(String clock) {
    return new Sent(club, id, type, data, time, sealed, "2026-05-05T" + clock + "Z", true);
  }

  Entry entry() {
    return raw(canonical(data));
  }

  /** With its data as it is, whether it is JSON or not. */
  Entry raw(String text) {
    Envelope envelope =
        new Envelope(id, "/apps/field-notes", OffsetDateTime.parse(time), null, null, Map.of());
    return new Entry(club, envelope, type, text, sealed, Instant.parse(recorded), recordedGiven);
  }

  static String canonical(String json) {
    try {
      return CanonicalJson.of(new JsonMapper().readTree(json.replace('\'', '"')));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(json, e);
    }
  }
}
