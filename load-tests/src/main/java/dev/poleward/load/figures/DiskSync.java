package dev.poleward.load.figures;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * What one sync to disk costs here and now. No figure of a durable write can be read without it: it
 * differs between disks by a factor of a hundred, and on a busy one from minute to minute.
 */
public final class DiskSync {

  private static final int SYNCS = 200;
  private static final int BYTES = 4096;

  private DiskSync() {}

  /** Times of writing 4 KiB at the end of a new file, with a sync after each. */
  public static Latencies measure(Path file) throws IOException {
    Latencies latencies = new Latencies();
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      for (int i = 0; i < SYNCS; i++) {
        long begun = System.nanoTime();
        channel.write(ByteBuffer.allocate(BYTES));
        channel.force(false);
        latencies.took(System.nanoTime() - begun);
      }
    }
    return latencies;
  }

  /** The same in words, for a table. */
  public static String median(Path file) throws IOException {
    Latencies latencies = measure(file);
    Report.note(
        "a sync of 4 KiB: p50 %s ms, p99 %s ms",
        latencies.percentile(50), latencies.percentile(99));
    return latencies.percentile(50);
  }
}
