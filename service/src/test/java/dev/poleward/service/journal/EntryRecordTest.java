package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.event.Envelope;
import dev.poleward.service.journal.JournalRecord.Foreign;
import dev.poleward.service.journal.JournalRecord.Recorded;
import io.cloudevents.CloudEvent;
import io.cloudevents.core.builder.CloudEventBuilder;
import io.cloudevents.kafka.KafkaMessageFactory;
import java.net.URI;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.header.Headers;
import org.apache.kafka.common.header.internals.RecordHeaders;
import org.apache.kafka.common.record.TimestampType;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Entries as CloudEvents in Kafka records, judged by CloudEvents' own library. */
class EntryRecordTest {

  @Test
  void whatWasWrittenIsReadAgain() {
    for (var entry : List.of(Entries.entry("club-a", 1), Entries.withEverything("club-b"))) {
      var record = asRead(EntryWriting.write("journal", entry));

      assertThat(EntryReading.read(record))
          .isEqualTo(new Recorded(new Place(record.partition(), 17), entry));
    }
  }

  @Test
  void theLibraryReadsWhatWeWrite() {
    // Given
    var entry = Entries.withEverything("club-b");

    // When
    CloudEvent event =
        KafkaMessageFactory.createReader(asRead(EntryWriting.write("journal", entry))).toEvent();

    // Then
    assertThat(event.getId()).isEqualTo("a/b c-ü-🐕");
    assertThat(event.getSource()).isEqualTo(URI.create("urn:timer:7"));
    assertThat(event.getType()).isEqualTo("dog.registered.v1");
    assertThat(event.getTime()).isEqualTo("2026-05-01T18:30:00.123456789-03:30");
    assertThat(event.getSubject()).isEqualTo("dogs/d1");
    assertThat(event.getDataSchema()).hasToString("https://example.org/schemas/dog.registered.v1");
    assertThat(event.getDataContentType()).isEqualTo("application/json");
    assertThat(event.getExtension("recordedtime")).isEqualTo("2026-05-02T00:00:00.000001Z");
    assertThat(event.getExtension("retry")).isEqualTo("3");
    assertThat(event.getExtensionNames())
        .containsExactlyInAnyOrder(
            "recordedtime", "trace", "retry", "sequence", "offline", "digits", "empty");
    assertThat(new String(Objects.requireNonNull(event.getData()).toBytes(), UTF_8))
        .isEqualTo(entry.data());
  }

  @Test
  void weReadWhatTheLibraryWrites() {
    // Given
    var event =
        CloudEventBuilder.v1()
            .withId("e1")
            .withSource(URI.create("//club/laptop"))
            .withType("rep.logged.v1")
            .withTime(OffsetDateTime.parse("2026-05-01T18:30+02:00"))
            .withSubject("dogs/d1")
            .withData("application/json; charset=utf-8", "{\"dog\":\"d1\"}".getBytes(UTF_8))
            .withExtension("recordedtime", OffsetDateTime.parse("2026-05-01T16:31:00.25Z"))
            .withExtension("trace", "00-ab")
            .build();
    byte[] key = "club-a".getBytes(UTF_8);

    // When
    ProducerRecord<byte[], byte[]> written =
        KafkaMessageFactory.<byte[]>createWriter("journal", Partitioning.partitionOf(key), key)
            .writeBinary(event);

    // Then
    assertThat(EntryReading.read(asRead(written)))
        .isInstanceOfSatisfying(
            Recorded.class,
            read -> {
              assertThat(read.entry().club()).isEqualTo("club-a");
              assertThat(read.entry().type()).isEqualTo("rep.logged.v1");
              assertThat(read.entry().data()).isEqualTo("{\"dog\":\"d1\"}");
              assertThat(read.entry().recorded()).isEqualTo("2026-05-01T16:31:00.25Z");
              assertThat(read.entry().envelope())
                  .isEqualTo(
                      new Envelope(
                          "e1",
                          "//club/laptop",
                          OffsetDateTime.parse("2026-05-01T18:30+02:00"),
                          "dogs/d1",
                          null,
                          Map.of("trace", "00-ab")));
            });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "recordedtime",
        "id",
        "source",
        "type",
        "time",
        "subject",
        "dataschema",
        "specversion",
        "datacontenttype"
      })
  void anExtensionCannotTakeTheNameOfAnAttribute(String name) {
    assertThatThrownBy(() -> EntryWriting.write("journal", withExtension(name, "x")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(name);
  }

  @Test
  void anExtensionIsTextAWholeNumberOrATruthValue() {
    assertThatThrownBy(() -> EntryWriting.write("journal", withExtension("share", 0.5)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Double");
  }

  @Test
  void whatIsNoEventOfOursIsForeignAndSaysWhy() {
    assertThat(why(record -> {})).isNull();
    assertThat(why(headers -> headers.remove("ce_specversion")))
        .isEqualTo("it is no CloudEvent 1.0");
    assertThat(why(headers -> set(headers, "ce_specversion", "0.3")))
        .isEqualTo("it is no CloudEvent 1.0");
    assertThat(why(headers -> set(headers, "content-type", "application/xml")))
        .isEqualTo("its content is not application/json");
    assertThat(why(headers -> headers.remove("ce_recordedtime")))
        .isEqualTo("it has no ce_recordedtime");
    assertThat(why(headers -> set(headers, "ce_id", ""))).isEqualTo("it has no ce_id");
    assertThat(why(headers -> set(headers, "ce_time", "yesterday")))
        .isEqualTo("its ce_time is no RFC 3339 time");
    assertThat(why(headers -> set(headers, "ce_time", "2026-02-30T10:00:00Z")))
        .isEqualTo("its ce_time is no RFC 3339 time");
    assertThat(why(headers -> set(headers, "pw_kinds", "retry=float")))
        .isEqualTo("its extension retry is not what pw_kinds says");
    assertThat(why(headers -> set(headers, "pw_kinds", "nowhere=integer")))
        .isEqualTo("its pw_kinds speaks of nowhere, which is not there");
    assertThat(why(headers -> headers.remove("pw_person")))
        .isEqualTo("it has only one of pw_person and pw_sealed");
    assertThat(
            why(
                headers ->
                    headers.remove("ce_subject").add("ce_subject", new byte[] {(byte) 0xC3})))
        .isEqualTo("ce_subject is not UTF-8");
    assertThat(why(headers -> headers.add("ce_note", null)))
        .isEqualTo("its header ce_note has no value");
  }

  @Test
  void aRecordWithoutKeyOrValueOrInAnothersPartitionIsForeign() {
    var headers = EntryWriting.write("journal", Entries.entry("club-a", 1)).headers();
    byte[] key = "club-a".getBytes(UTF_8);
    int partition = Partitioning.partitionOf(key);

    assertThat(EntryReading.read(record(partition, null, new byte[0], headers)))
        .isInstanceOf(Foreign.class);
    assertThat(EntryReading.read(record(partition, key, null, headers)))
        .isInstanceOf(Foreign.class);
    assertThat(EntryReading.read(record((partition + 1) % 12, key, new byte[0], headers)))
        .isEqualTo(
            new Foreign(
                new Place((partition + 1) % 12, 17), "its club's place is partition " + partition));
    assertThat(EntryReading.read(record(partition, key, new byte[] {(byte) 0xFF}, headers)))
        .isEqualTo(new Foreign(new Place(partition, 17), "its value is not UTF-8"));
  }

  private interface Change {
    void to(Headers headers);
  }

  /** Why a good record is foreign after a change, or null if it is not. */
  private static @Nullable String why(Change change) {
    var written = EntryWriting.write("journal", Entries.withEverything("club-b"));
    var headers = new RecordHeaders(written.headers());
    change.to(headers);
    var read =
        EntryReading.read(record(written.partition(), written.key(), written.value(), headers));
    return read instanceof Foreign foreign ? foreign.why() : null;
  }

  private static void set(Headers headers, String name, String value) {
    headers.remove(name).add(name, value.getBytes(UTF_8));
  }

  private static Entry withExtension(String name, Object value) {
    var bare = Entries.entry("club-a", 1);
    return new Entry(
        bare.club(),
        new Envelope("1", "/s", bare.envelope().time(), null, null, Map.of(name, value)),
        bare.type(),
        bare.data(),
        null,
        bare.recorded(),
        false);
  }

  private static ConsumerRecord<byte @Nullable [], byte @Nullable []> asRead(
      ProducerRecord<byte[], byte[]> written) {
    return record(written.partition(), written.key(), written.value(), written.headers());
  }

  private static ConsumerRecord<byte @Nullable [], byte @Nullable []> record(
      int partition, byte @Nullable [] key, byte @Nullable [] value, Headers headers) {
    return new ConsumerRecord<>(
        "journal",
        partition,
        17,
        0,
        TimestampType.CREATE_TIME,
        0,
        0,
        key,
        value,
        headers,
        Optional.empty());
  }
}
