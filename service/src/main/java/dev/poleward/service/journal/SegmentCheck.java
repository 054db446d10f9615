package dev.poleward.service.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Reads every byte of the journal before the broker does. After a kill the broker would cut a
 * partition off at the first batch that it cannot read and go on without a word; here it stops the
 * start, so that nothing acknowledged is ever lost in silence. The one thing that may be cut off is
 * an append that was never finished.
 *
 * <p>Reads only. For the thread that starts the service, while no broker runs on the folder.
 */
public final class SegmentCheck {

  private static final String PERSON_KEYS = JournalTopics.PERSON_KEYS + "-0";
  private static final List<String> JOURNAL =
      IntStream.range(0, Journal.PARTITIONS)
          .mapToObj(p -> JournalTopics.JOURNAL + "-" + p)
          .toList();
  private static final List<String> TOPICS =
      Stream.concat(JOURNAL.stream(), Stream.of(PERSON_KEYS)).toList();
  private static final String STOPPED_IN_ORDER = ".kafka_cleanshutdown";
  private static final int THREADS_MAX = 4;

  /** What the check found. */
  public sealed interface Outcome {

    /**
     * The journal is as it was written.
     *
     * @param ends offset of each partition's next record
     * @param torn appends that were never finished, in words; the broker will cut them off
     */
    record Sound(List<Long> ends, List<String> torn) implements Outcome {}

    /**
     * The journal is not as it was written, and must not be used.
     *
     * @param faults each in words, with file and first bad offset
     */
    record Damaged(List<String> faults) implements Outcome {}
  }

  private SegmentCheck() {}

  /**
   * Checks the broker's folder.
   *
   * @param folder the broker's, perhaps still empty
   * @param acknowledged for each partition of the journal, an offset below which all is known to
   *     have been acknowledged; 0 where nothing is known
   * @throws IOException when a file cannot be read at all
   */
  public static Outcome check(Path folder, long[] acknowledged) throws IOException {
    if (acknowledged.length != Journal.PARTITIONS) {
      throw new IllegalArgumentException(acknowledged.length + " partitions acknowledged");
    }
    boolean inOrder = Files.exists(folder.resolve(STOPPED_IN_ORDER));
    var folders = new LinkedHashMap<String, PartitionFolder>();
    for (var name : JOURNAL) {
      folders.put(name, new PartitionFolder(folder.resolve(name), true, inOrder));
    }
    for (var name : List.of(PERSON_KEYS, TopicRegistry.FOLDER)) {
      // The broker says that it stopped before its record of itself is closed.
      boolean closed = inOrder && !name.equals(TopicRegistry.FOLDER);
      folders.put(name, new PartitionFolder(folder.resolve(name), false, closed));
    }
    return judge(folder, findings(folders), acknowledged);
  }

  private static Outcome judge(
      Path folder, Map<String, PartitionFolder.Finding> findings, long[] acknowledged)
      throws IOException {
    var flushed = FlushedOffsets.in(folder);
    var faults = new ArrayList<String>();
    var torn = new ArrayList<String>();
    findings.forEach(
        (name, finding) -> {
          switch (finding) {
            case PartitionFolder.Finding.Damaged damaged -> faults.add(damaged.words());
            case PartitionFolder.Finding.Sound sound -> {
              if (!sound.torn().isEmpty()) {
                torn.add(sound.torn());
              }
              if (sound.end() < flushed.below(name)) {
                faults.add(
                    "%s: ends at %d, but %d were on the disk"
                        .formatted(folder.resolve(name), sound.end(), flushed.below(name)));
              }
            }
          }
        });
    var ends = JOURNAL.stream().mapToLong(name -> end(findings, name)).toArray();
    for (int partition = 0; partition < ends.length; partition++) {
      if (ends[partition] >= 0 && ends[partition] < acknowledged[partition]) {
        faults.add(
            "partition %d ends at %d, but %d were acknowledged"
                .formatted(partition, ends[partition], acknowledged[partition]));
      }
    }
    if (TOPICS.stream().anyMatch(name -> end(findings, name) != 0)) {
      faults.addAll(missing(folder));
    }
    return faults.isEmpty()
        ? new Outcome.Sound(LongStream.of(ends).boxed().toList(), List.copyOf(torn))
        : new Outcome.Damaged(List.copyOf(faults));
  }

  /** The end of a partition; -1 when it is damaged, and so said already. */
  private static long end(Map<String, PartitionFolder.Finding> findings, String name) {
    return findings.get(name) instanceof PartitionFolder.Finding.Sound sound ? sound.end() : -1;
  }

  /** What a folder with entries must hold besides. */
  private static List<String> missing(Path folder) throws IOException {
    var needed = new ArrayList<>(TOPICS);
    needed.add("meta.properties");
    needed.add(TopicRegistry.FOLDER);
    var missing = new ArrayList<String>();
    for (var name : needed) {
      if (!Files.exists(folder.resolve(name))) {
        missing.add("%s: is missing, while others have entries".formatted(folder.resolve(name)));
      }
    }
    missing.addAll(TopicRegistry.strays(folder, TOPICS));
    return missing;
  }

  private static Map<String, PartitionFolder.Finding> findings(Map<String, PartitionFolder> folders)
      throws IOException {
    int threads = Math.min(THREADS_MAX, Runtime.getRuntime().availableProcessors());
    var findings = new LinkedHashMap<String, PartitionFolder.Finding>();
    try (var readers = Executors.newFixedThreadPool(threads)) {
      var reading = new LinkedHashMap<String, Future<PartitionFolder.Finding>>();
      folders.forEach((name, folder) -> reading.put(name, readers.submit(() -> finding(folder))));
      for (var each : reading.entrySet()) {
        findings.put(each.getKey(), each.getValue().get());
      }
      return findings;
    } catch (ExecutionException failed) {
      throw new IOException("The journal's files cannot be read", failed.getCause());
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted while reading the journal's files", stopping);
    }
  }

  private static PartitionFolder.Finding finding(PartitionFolder folder) throws IOException {
    return Files.isDirectory(folder.path())
        ? folder.check()
        : new PartitionFolder.Finding.Sound(0, "");
  }
}
