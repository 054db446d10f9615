package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.kafka.common.Uuid;
import org.apache.kafka.common.compress.Compression;
import org.apache.kafka.common.record.internal.MemoryRecords;
import org.apache.kafka.common.record.internal.SimpleRecord;

/** A broker's folder as it lies on the disk, made without a broker, and the harm done to it. */
final class JournalFiles {

  static final int SEGMENTS = 3;
  static final int BATCHES = 4;
  static final int RECORDS = 5;

  /** How many records each partition has. */
  static final long END = (long) SEGMENTS * BATCHES * RECORDS;

  private static final Uuid TOPIC = Uuid.fromString("WRNLBz0LR_aJc23EwoVpsA");

  final Path folder;

  private JournalFiles(Path folder) {
    this.folder = folder;
  }

  /** A journal of {@link #END} records in every partition, as a kill leaves it. */
  static JournalFiles in(Path folder) throws IOException {
    var files = new JournalFiles(folder);
    Files.writeString(folder.resolve("meta.properties"), "version=1\n");
    var registry = Files.createDirectories(folder.resolve("__cluster_metadata-0"));
    append(registry.resolve("%020d.log".formatted(0)), created(TOPIC));
    for (int partition = 0; partition < Journal.PARTITIONS; partition++) {
      files.write(files.partition(partition));
    }
    files.write(folder.resolve("person-keys-0"));
    return files;
  }

  private void write(Path partition) throws IOException {
    Files.createDirectories(partition);
    Files.writeString(partition.resolve("partition.metadata"), "version: 0\ntopic_id: " + TOPIC);
    Files.writeString(partition.resolve("leader-epoch-checkpoint"), "0\n2\n0 0\n3 20\n");
    long offset = 0;
    for (int segment = 0; segment < SEGMENTS; segment++) {
      var file = partition.resolve("%020d.log".formatted(offset));
      for (int batch = 0; batch < BATCHES; batch++) {
        append(file, batch(offset, offset < 20 ? 0 : 3));
        offset += RECORDS;
      }
    }
  }

  private static ByteBuffer created(Uuid topic) {
    var id = ByteBuffer.allocate(16);
    id.putLong(topic.getMostSignificantBits()).putLong(topic.getLeastSignificantBits());
    return MemoryRecords.withRecords(0, Compression.NONE, 0, new SimpleRecord(id.array())).buffer();
  }

  /** A batch of {@link #RECORDS} records from an offset on. */
  static ByteBuffer batch(long offset, int epoch) {
    var records =
        IntStream.range(0, RECORDS)
            .mapToObj(at -> new SimpleRecord(1_777_000_000_000L, bytes("k"), bytes("v" + at)))
            .toArray(SimpleRecord[]::new);
    return MemoryRecords.withRecords(offset, Compression.NONE, epoch, records).buffer();
  }

  static void append(Path file, ByteBuffer bytes) throws IOException {
    try (var channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
      channel.write(bytes);
    }
  }

  Path partition(int partition) {
    return folder.resolve("journal-" + partition);
  }

  /** A partition's segment files, the oldest first. */
  List<Path> segments(int partition) throws IOException {
    try (Stream<Path> files = Files.list(partition(partition))) {
      return files.filter(file -> file.toString().endsWith(".log")).sorted().toList();
    }
  }

  Path lastSegment(int partition) throws IOException {
    return segments(partition).getLast();
  }

  /** What the broker notes every second while it runs, and when it stops. */
  void noteFlushed(int partition, long below) throws IOException {
    Files.writeString(
        folder.resolve("recovery-point-offset-checkpoint"),
        "0\n1\njournal %d %d\n".formatted(partition, below));
  }

  void noteStoppedInOrder() throws IOException {
    Files.writeString(folder.resolve(".kafka_cleanshutdown"), "{\"version\":0}");
  }

  static void flip(Path file, int at, int bits) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[at] ^= (byte) bits;
    Files.write(file, bytes);
  }

  static void cut(Path file, long size) throws IOException {
    try (var channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.truncate(size);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(UTF_8);
  }
}
