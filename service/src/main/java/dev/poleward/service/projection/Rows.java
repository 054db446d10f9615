package dev.poleward.service.projection;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.Sealed;
import dev.poleward.service.codec.Documents;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.journal.Entry;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The values of rows that hold an event. Every such row is whole in itself, so that a read needs no
 * second look. Immutable; safe for use by many threads.
 */
final class Rows {

  private static final ObjectReader OBJECTS = new ObjectMapper().readerFor(ObjectNode.class);

  private final EventCodec codec;

  Rows(EventCodec codec) {
    this.codec = codec;
  }

  /** First byte of a row that holds an event. */
  private static final int EVENT = 0;

  /** First byte of a row that says where the event is. */
  private static final int POINTER = 1;

  /** A row that says under which key the event is. */
  static byte[] pointer(byte[] key) {
    return new RowOutput().octet(POINTER).raw(key).done();
  }

  /** The key in a row that {@link #pointer} made; null when the row holds the event itself. */
  static byte @Nullable [] target(byte[] row) {
    return row[0] == POINTER ? Arrays.copyOfRange(row, 1, row.length) : null;
  }

  /** The part of a whole row that views need: without the envelope behind it. */
  static byte[] factOf(byte[] whole) {
    return Arrays.copyOf(whole, new RowInput(whole).after(EVENT).whole());
  }

  private static RowOutput putFact(RowOutput out, Entry entry, Instant recorded) {
    out.instant(entry.envelope().time().toInstant())
        .instant(recorded)
        .text(entry.envelope().id())
        .text(entry.type());
    Sealed sealed = entry.sealed();
    if (sealed == null) {
      out.text(null);
    } else {
      out.text(sealed.person()).text(sealed.keyId()).text(sealed.box());
    }
    return out.text(entry.data());
  }

  /** A row with the whole event, envelope and all. */
  static byte[] whole(Entry entry, Instant recorded) {
    Envelope envelope = entry.envelope();
    RowOutput out = putFact(new RowOutput().octet(EVENT).whole(0), entry, recorded);
    out.lengthAt(1);
    out.text(envelope.time().toString())
        .text(envelope.source())
        .text(envelope.subject())
        .text(envelope.dataschema())
        .text(
            envelope.extensions().isEmpty()
                ? null
                : Documents.write(envelope.extensions()).toString());
    return out.done();
  }

  /** What a row holds before its data is understood. */
  private record Raw(
      Moment moment, Instant recorded, String type, @Nullable Sealed sealed, String data) {}

  private static Raw raw(RowInput in) {
    in.after(EVENT).whole();
    Instant time = in.instant();
    Instant recorded = in.instant();
    String id = in.text();
    String type = in.text();
    String person = in.optionalText();
    Sealed sealed = person == null ? null : new Sealed(person, in.text(), in.text());
    return new Raw(new Moment(time, id), recorded, type, sealed, in.text());
  }

  /** The fact in a row of either kind. */
  Fact<?> readFact(byte[] row) {
    Raw raw = raw(new RowInput(row));
    return new Fact<>(raw.moment(), raw.recorded(), event(raw.type(), raw.data()), raw.sealed());
  }

  /** The whole event in a row that {@link #whole} made. */
  Reading.FeedEvent readWhole(long position, byte[] row) {
    RowInput in = new RowInput(row);
    Raw raw = raw(in);
    TrainingEvent event = event(raw.type(), raw.data());
    return new Reading.FeedEvent(
        position,
        envelope(raw.moment().id(), in),
        EventCodec.typeOf(event),
        event,
        raw.recorded(),
        raw.sealed());
  }

  /** The contradicting event in a row that {@link #whole} made. */
  Reading.Contradiction readContradiction(byte[] row) {
    RowInput in = new RowInput(row);
    Raw raw = raw(in);
    return new Reading.Contradiction(
        envelope(raw.moment().id(), in), raw.type(), raw.data(), raw.recorded());
  }

  private static Envelope envelope(String id, RowInput in) {
    OffsetDateTime time = OffsetDateTime.parse(in.text());
    String source = in.text();
    String subject = in.optionalText();
    String dataschema = in.optionalText();
    String extensions = in.optionalText();
    return new Envelope(
        id,
        source,
        time,
        subject,
        dataschema,
        extensions == null ? Map.of() : Documents.read(object(extensions)));
  }

  private TrainingEvent event(String type, String data) {
    TrainingEvent event = codec.decode(type, object(data));
    if (event == null) {
      throw new IllegalStateException("a row holds a type that was understood once: " + type);
    }
    return event;
  }

  /** The event of an entry, or null when its type is not known to this version. */
  @Nullable TrainingEvent understood(Entry entry) {
    return codec.decode(entry.type(), object(entry.data()));
  }

  static ObjectNode object(String json) {
    try {
      return OBJECTS.readValue(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("recorded data is a JSON object", e);
    }
  }
}
