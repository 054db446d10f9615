package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Map;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.header.Headers;
import org.apache.kafka.common.header.internals.RecordHeaders;

/** Entries as Kafka records, in the binary mode of CloudEvents' Kafka binding. */
final class EntryWriting {

  private static final byte[] SPEC_VERSION = "1.0".getBytes(UTF_8);
  private static final byte[] JSON = "application/json".getBytes(UTF_8);
  private static final byte[] GIVEN = "given".getBytes(UTF_8);

  private EntryWriting() {}

  /**
   * Writes an entry.
   *
   * @throws IllegalArgumentException when an extension has a name that is ours, or a value that is
   *     neither text nor a whole number nor a truth value
   */
  static ProducerRecord<byte[], byte[]> write(String topic, Entry entry) {
    var envelope = entry.envelope();
    var headers = new RecordHeaders();
    headers.add(EntryHeaders.SPEC_VERSION, SPEC_VERSION);
    add(headers, EntryHeaders.ID, envelope.id());
    add(headers, EntryHeaders.SOURCE, envelope.source());
    add(headers, EntryHeaders.TYPE, entry.type());
    headers.add(EntryHeaders.TIME, Rfc3339.bytes(envelope.time()));
    if (envelope.subject() != null) {
      add(headers, EntryHeaders.SUBJECT, envelope.subject());
    }
    if (envelope.dataschema() != null) {
      add(headers, EntryHeaders.DATA_SCHEMA, envelope.dataschema());
    }
    headers.add(EntryHeaders.CONTENT_TYPE, JSON);
    add(headers, EntryHeaders.RECORDED_TIME, entry.recorded().toString());
    if (entry.recordedGiven()) {
      headers.add(EntryHeaders.RECORDED_GIVEN, GIVEN);
    }
    var sealed = entry.sealed();
    if (sealed != null) {
      add(headers, EntryHeaders.PERSON, sealed.person() + "/" + sealed.keyId());
      add(headers, EntryHeaders.SEALED, sealed.box());
    }
    if (!envelope.extensions().isEmpty()) {
      addExtensions(headers, entry);
    }
    byte[] key = entry.club().getBytes(UTF_8);
    byte[] value = entry.data().getBytes(UTF_8);
    return new ProducerRecord<>(topic, Partitioning.partitionOf(key), key, value, headers);
  }

  /** What a record takes on its way to the broker, in bytes, a little more than less. */
  static int sizeOf(ProducerRecord<byte[], byte[]> record) {
    int size = 64 + record.key().length + record.value().length;
    for (var header : record.headers()) {
      size += 8 + header.key().length() + header.value().length;
    }
    return size;
  }

  private static void addExtensions(Headers headers, Entry entry) {
    var kinds = new StringBuilder();
    entry.envelope().extensions().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            extension -> {
              var name = extension.getKey();
              var header = EntryHeaders.ATTRIBUTE + name;
              if (EntryReading.isOurs(header)) {
                throw new IllegalArgumentException("an extension must not be named " + name);
              }
              var value = extension.getValue();
              add(headers, header, value.toString());
              var kind = ExtensionKind.of(value);
              if (kind != ExtensionKind.TEXT) {
                kinds.append(kinds.isEmpty() ? "" : ",").append(name).append('=').append(kind.word);
              }
            });
    if (!kinds.isEmpty()) {
      add(headers, EntryHeaders.KINDS, kinds.toString());
    }
  }

  private static void add(Headers headers, String name, String value) {
    headers.add(name, value.getBytes(UTF_8));
  }
}
