package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.record.Sealed;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Map;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.common.header.Header;
import org.jspecify.annotations.Nullable;

/**
 * Reads one Kafka record back into an entry, headers by hand: this is the inner loop of a rebuild.
 * One object for each record, for one thread.
 */
final class EntryReading {

  /** Why a record is no event of ours. Expected, so without a stack. */
  private static final class Unreadable extends Exception {

    private static final long serialVersionUID = 1L;

    Unreadable(String why) {
      super(why, null, false, false);
    }
  }

  private @Nullable String id;
  private @Nullable String source;
  private @Nullable String type;
  private @Nullable OffsetDateTime time;
  private @Nullable String subject;
  private @Nullable String dataschema;
  private @Nullable OffsetDateTime recorded;
  private @Nullable String person;
  private @Nullable String box;
  private @Nullable String kinds;
  private @Nullable Map<String, Object> extensions;
  private boolean recordedGiven;
  private boolean ofVersionOne;
  private boolean json;

  private EntryReading() {}

  /** What a record is: an event, or something foreign; never an exception. */
  static JournalRecord read(ConsumerRecord<byte @Nullable [], byte @Nullable []> record) {
    var place = new Place(record.partition(), record.offset());
    try {
      return new JournalRecord.Recorded(place, new EntryReading().entry(record));
    } catch (Unreadable foreign) {
      return new JournalRecord.Foreign(place, String.valueOf(foreign.getMessage()));
    }
  }

  /** Whether a header has a meaning of its own, so that no extension can be named so. */
  static boolean isOurs(String header) {
    return switch (header) {
      case EntryHeaders.SPEC_VERSION,
          EntryHeaders.ID,
          EntryHeaders.SOURCE,
          EntryHeaders.TYPE,
          EntryHeaders.TIME,
          EntryHeaders.SUBJECT,
          EntryHeaders.DATA_SCHEMA,
          EntryHeaders.RECORDED_TIME,
          "ce_datacontenttype",
          "ce_data" ->
          true;
      default -> false;
    };
  }

  private Entry entry(ConsumerRecord<byte @Nullable [], byte @Nullable []> record)
      throws Unreadable {
    byte[] key = record.key();
    byte[] value = record.value();
    if (key == null || value == null) {
      throw new Unreadable(key == null ? "it has no key" : "it has no value");
    }
    if (Partitioning.partitionOf(key) != record.partition()) {
      throw new Unreadable("its club's place is partition " + Partitioning.partitionOf(key));
    }
    for (var header : record.headers()) {
      read(header);
    }
    if (!ofVersionOne || !json) {
      throw new Unreadable(
          ofVersionOne ? "its content is not application/json" : "it is no CloudEvent 1.0");
    }
    if (kinds != null) {
      restoreKinds(kinds);
    }
    var envelope =
        new Envelope(
            required(id, EntryHeaders.ID),
            required(source, EntryHeaders.SOURCE),
            required(time, EntryHeaders.TIME),
            subject,
            dataschema,
            extensions == null ? Map.of() : extensions);
    return new Entry(
        text(key, "its key"),
        envelope,
        required(type, EntryHeaders.TYPE),
        text(value, "its value"),
        sealed(),
        required(recorded, EntryHeaders.RECORDED_TIME).toInstant(),
        recordedGiven);
  }

  private void read(Header header) throws Unreadable {
    var name = header.key();
    byte[] value = header.value();
    if (value == null) {
      throw new Unreadable("its header " + name + " has no value");
    }
    switch (name) {
      case EntryHeaders.SPEC_VERSION ->
          ofVersionOne = value.length == 3 && value[0] == '1' && value[1] == '.' && value[2] == '0';
      case EntryHeaders.ID -> id = text(value, name);
      case EntryHeaders.SOURCE -> source = text(value, name);
      case EntryHeaders.TYPE -> type = text(value, name);
      case EntryHeaders.TIME -> time = time(value, name);
      case EntryHeaders.SUBJECT -> subject = text(value, name);
      case EntryHeaders.DATA_SCHEMA -> dataschema = text(value, name);
      case EntryHeaders.RECORDED_TIME -> recorded = time(value, name);
      case EntryHeaders.CONTENT_TYPE -> json = isJson(text(value, name));
      case EntryHeaders.RECORDED_GIVEN -> recordedGiven = text(value, name).equals("given");
      case EntryHeaders.PERSON -> person = text(value, name);
      case EntryHeaders.SEALED -> box = text(value, name);
      case EntryHeaders.KINDS -> kinds = text(value, name);
      default -> {
        if (name.startsWith(EntryHeaders.ATTRIBUTE)) {
          if (extensions == null) {
            extensions = new HashMap<>();
          }
          extensions.put(name.substring(EntryHeaders.ATTRIBUTE.length()), text(value, name));
        }
      }
    }
  }

  private static boolean isJson(String contentType) {
    return contentType.equals("application/json") || contentType.startsWith("application/json;");
  }

  private @Nullable Sealed sealed() throws Unreadable {
    if (person == null && box == null) {
      return null;
    }
    if (person == null || box == null) {
      throw new Unreadable("it has only one of pw_person and pw_sealed");
    }
    int slash = person.indexOf('/');
    if (slash < 0) {
      throw new Unreadable("its pw_person does not name a key");
    }
    return new Sealed(person.substring(0, slash), person.substring(slash + 1), box);
  }

  private void restoreKinds(String list) throws Unreadable {
    for (var item : list.split(",", -1)) {
      int equals = item.indexOf('=');
      var name = equals < 0 ? item : item.substring(0, equals);
      var value = extensions == null ? null : extensions.get(name);
      if (equals < 0 || extensions == null || !(value instanceof String text)) {
        throw new Unreadable("its pw_kinds speaks of " + name + ", which is not there");
      }
      try {
        extensions.put(name, ExtensionKind.ofWord(item.substring(equals + 1)).read(text));
      } catch (IllegalArgumentException misfit) {
        throw new Unreadable("its extension " + name + " is not what pw_kinds says");
      }
    }
  }

  private static <T> T required(@Nullable T value, String header) throws Unreadable {
    if (value == null || value.equals("")) {
      throw new Unreadable("it has no " + header);
    }
    return value;
  }

  private static OffsetDateTime time(byte[] value, String header) throws Unreadable {
    try {
      return Rfc3339.parse(value);
    } catch (DateTimeException noTime) {
      throw new Unreadable("its " + header + " is no RFC 3339 time");
    }
  }

  /** Decoding puts U+FFFD where bytes are no UTF-8, so only texts with one need a closer look. */
  private static String text(byte[] bytes, String what) throws Unreadable {
    var text = new String(bytes, UTF_8);
    if (text.indexOf('\uFFFD') >= 0) {
      try {
        UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      } catch (CharacterCodingException malformed) {
        throw new Unreadable(what + " is not UTF-8");
      }
    }
    return text;
  }
}
