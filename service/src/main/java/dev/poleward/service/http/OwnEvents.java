package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.service.access.Randomness;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.contract.SentEvent;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.Map;

/** Events that the service makes itself, of types that the event doors refuse. */
final class OwnEvents {

  private static final String SOURCE = "/poleward";

  private static final int ID_BYTES = 16;

  private final EventCodec codec;
  private final Randomness randomness;

  OwnEvents(EventCodec codec, Randomness randomness) {
    this.codec = codec;
    this.randomness = randomness;
  }

  SentEvent of(String id, OffsetDateTime time, TrainingEvent event) {
    ObjectNode data = codec.encode(event);
    Envelope envelope = new Envelope(id, SOURCE, time, null, null, Map.of());
    return new SentEvent(envelope, EventCodec.typeOf(event), data, null, false);
  }

  SentEvent of(String id, Instant time, TrainingEvent event) {
    return of(id, time.atOffset(ZoneOffset.UTC), event);
  }

  /**
   * An id for such an event. Nobody can guess it, and so nobody can be there first with an event of
   * theirs.
   */
  String newId() {
    byte[] random = new byte[ID_BYTES];
    randomness.fill(random);
    return HexFormat.of().formatHex(random);
  }

  /** What to throw when an id of {@link #newId()} was there before: it cannot be. */
  static IllegalStateException guessed(SentEvent event) {
    return new IllegalStateException(
        "event " + event.envelope().id() + " was recorded before, under an id made just now");
  }
}
