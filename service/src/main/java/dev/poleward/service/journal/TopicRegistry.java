package dev.poleward.service.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.kafka.common.Uuid;
import org.jspecify.annotations.Nullable;

/**
 * Whether the broker's record of itself, {@code __cluster_metadata-0}, knows the topics whose
 * partitions lie beside it. A broker takes a partition of a topic that it does not know for a stray
 * and puts it out of the way, entries and all.
 */
final class TopicRegistry {

  static final String FOLDER = "__cluster_metadata-0";

  private static final String ABOUT = "partition.metadata";
  private static final String TOPIC_ID = "topic_id: ";

  private TopicRegistry() {}

  /** Those partitions that the broker would put out of the way, each in words. */
  static List<String> strays(Path folder, List<String> partitions) throws IOException {
    var strays = new ArrayList<String>();
    for (var name : partitions) {
      var partition = folder.resolve(name);
      if (Files.isDirectory(partition)) {
        var id = topicId(partition);
        if (id == null) {
          strays.add(
              "%s: is missing or does not say the topic's id".formatted(partition.resolve(ABOUT)));
        } else if (!knows(folder.resolve(FOLDER), id)) {
          strays.add(
              "%s: belongs to a topic that the broker's record of itself, in %s, does not know"
                  .formatted(partition, folder.resolve(FOLDER)));
        }
      }
    }
    return strays;
  }

  private static @Nullable Uuid topicId(Path partition) throws IOException {
    var about = partition.resolve(ABOUT);
    if (!Files.exists(about)) {
      return null;
    }
    for (var line : Files.readAllLines(about)) {
      if (line.startsWith(TOPIC_ID)) {
        try {
          return Uuid.fromString(line.substring(TOPIC_ID.length()));
        } catch (IllegalArgumentException none) {
          return null;
        }
      }
    }
    return null;
  }

  /** Looks for the id's bytes: they stand in the record that created the topic, or a snapshot. */
  private static boolean knows(Path registry, Uuid id) throws IOException {
    if (!Files.isDirectory(registry)) {
      return false;
    }
    try (var files = Files.list(registry)) {
      for (var file : files.filter(TopicRegistry::holdsRecords).toList()) {
        if (holds(ByteBuffer.wrap(Files.readAllBytes(file)), id)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean holdsRecords(Path file) {
    return file.toString().endsWith(".log") || file.toString().endsWith(".checkpoint");
  }

  private static boolean holds(ByteBuffer bytes, Uuid id) {
    for (int at = 0; at <= bytes.limit() - 2 * Long.BYTES; at++) {
      if (bytes.getLong(at) == id.getMostSignificantBits()
          && bytes.getLong(at + Long.BYTES) == id.getLeastSignificantBits()) {
        return true;
      }
    }
    return false;
  }
}
