package dev.poleward.service.projection;

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

  private final PackedEvents events;

  Rows(EventCodec codec) {
    this.events = new PackedEvents(codec);
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

  private static void putHead(RowOutput out, Entry entry, Instant recorded) {
    out.octet(EVENT)
        .whole(0)
        .instant(entry.envelope().time().toInstant())
        .instant(recorded)
        .text(entry.envelope().id());
    Sealed sealed = entry.sealed();
    if (sealed == null) {
      out.text(null);
    } else {
      out.text(sealed.person()).text(sealed.keyId()).text(sealed.box());
    }
  }

  /** A row with the whole event, envelope and all. */
  static byte[] whole(Entry entry, TrainingEvent event, Instant recorded) {
    RowOutput out = new RowOutput();
    putHead(out, entry, recorded);
    PackedEvents.put(out, event, entry.type(), entry.data());
    return withEnvelope(out, entry.envelope());
  }

  /** A row with an event as it came, envelope and all. */
  static byte[] asItCame(Entry entry, Instant recorded) {
    RowOutput out = new RowOutput();
    putHead(out, entry, recorded);
    PackedEvents.putJson(out, entry.type(), entry.data());
    return withEnvelope(out, entry.envelope());
  }

  private static byte[] withEnvelope(RowOutput out, Envelope envelope) {
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

  /** What a row holds before the event itself. */
  private record Head(Moment moment, Instant recorded, @Nullable Sealed sealed) {}

  private static Head head(RowInput in) {
    in.after(EVENT).whole();
    Instant time = in.instant();
    Instant recorded = in.instant();
    String id = in.text();
    String person = in.optionalText();
    Sealed sealed = person == null ? null : new Sealed(person, in.text(), in.text());
    return new Head(new Moment(time, id), recorded, sealed);
  }

  /** The fact in a row of either kind. */
  Fact<?> readFact(byte[] row) {
    RowInput in = new RowInput(row);
    Head head = head(in);
    return new Fact<>(head.moment(), head.recorded(), events.read(in), head.sealed());
  }

  /** The whole event in a row that {@link #whole} made. */
  Reading.FeedEvent readWhole(long position, byte[] row) {
    RowInput in = new RowInput(row);
    Head head = head(in);
    TrainingEvent event = events.read(in);
    return new Reading.FeedEvent(
        position,
        envelope(head.moment().id(), in),
        EventCodec.typeOf(event),
        event,
        head.recorded(),
        head.sealed());
  }

  /** The contradicting event in a row that {@link #asItCame} made. */
  Reading.Contradiction readContradiction(byte[] row) {
    RowInput in = new RowInput(row);
    Head head = head(in);
    PackedEvents.Json came = PackedEvents.readJson(in);
    return new Reading.Contradiction(
        envelope(head.moment().id(), in), came.type(), came.data(), head.recorded());
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
        extensions == null ? Map.of() : Documents.read(PackedEvents.object(extensions)));
  }

  /** The event of an entry, or null when its type is not known to this version. */
  @Nullable TrainingEvent understood(Entry entry) {
    return events.understood(entry.type(), entry.data());
  }
}
