package dev.poleward.service.projection;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.service.codec.EventCodec;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Events as they lie in rows. Reps, setups and timings are read by the thousand for one answer and
 * are packed member by member; everything else is the JSON that came. Immutable; safe for use by
 * many threads.
 */
final class PackedEvents {

  private static final ObjectReader OBJECTS = new ObjectMapper().readerFor(ObjectNode.class);

  /** First byte of an event that is its type and its data as JSON. */
  private static final int JSON = 0;

  /** First byte of a packed rep. */
  private static final int REP = 1;

  /** First byte of a packed setup. */
  private static final int SETUP = 2;

  /** First byte of a packed timing. */
  private static final int TIMING = 3;

  private final EventCodec codec;

  PackedEvents(EventCodec codec) {
    this.codec = codec;
  }

  /** Writes an event that this version understands. */
  static void put(RowOutput out, TrainingEvent event, String type, String data) {
    if (event instanceof RepLogged rep) {
      PackedRep.put(out.octet(REP), rep);
    } else if (event instanceof SetupChanged setup) {
      PackedSetup.put(out.octet(SETUP), setup);
    } else if (event instanceof TimingRecorded timing) {
      PackedTiming.put(out.octet(TIMING), timing);
    } else {
      putJson(out, type, data);
    }
  }

  /** Writes what came, whatever it is. */
  static void putJson(RowOutput out, String type, String data) {
    out.octet(JSON).text(type).text(data);
  }

  /** Reads an event. */
  TrainingEvent read(RowInput in) {
    int form = in.octet();
    return switch (form) {
      case JSON -> event(in.text(), in.text());
      case REP -> PackedRep.read(in);
      case SETUP -> PackedSetup.read(in);
      case TIMING -> PackedTiming.read(in);
      default -> throw new IllegalStateException("a row holds an event in the form " + form);
    };
  }

  /** What came, where it was written as such. */
  static Json readJson(RowInput in) {
    int form = in.octet();
    if (form != JSON) {
      throw new IllegalStateException("a row holds an event in the form " + form + ", not as JSON");
    }
    return new Json(in.text(), in.text());
  }

  /** An event's type and data as they came. */
  record Json(String type, String data) {}

  /** An event as it came; null when its type is not known to this version. */
  @Nullable TrainingEvent understood(String type, String data) {
    return codec.decode(type, object(data));
  }

  static ObjectNode object(String json) {
    try {
      return OBJECTS.readValue(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("recorded data is a JSON object", e);
    }
  }

  private TrainingEvent event(String type, String data) {
    return Objects.requireNonNull(
        understood(type, data), () -> "a row holds a type that was understood once: " + type);
  }
}
