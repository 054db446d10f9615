package dev.poleward.service.journal;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The disk of a folder on this machine, looked at once a second at most. A disk that cannot be
 * asked counts as full. Safe for use by many threads.
 */
public final class LocalDiskSpace implements DiskSpace {

  /** What stays free by default, in bytes: 512 MiB. */
  public static final long RESERVE_BYTES = 512L << 20;

  private static final Logger LOG = LoggerFactory.getLogger(LocalDiskSpace.class);
  private static final long LOOK_NANOS = Duration.ofSeconds(1).toNanos();

  private final FileStore store;
  private final long reserveBytes;
  private final AtomicLong lookAgainAtNanos = new AtomicLong(System.nanoTime());
  private volatile boolean nearlyFull;

  /**
   * Watches the disk that holds a folder.
   *
   * @param folder an existing folder
   * @param reserveBytes what must stay free, 0 or more
   * @throws IOException when the folder's disk is not known
   */
  public LocalDiskSpace(Path folder, long reserveBytes) throws IOException {
    if (reserveBytes < 0) {
      throw new IllegalArgumentException("the reserve of the disk is " + reserveBytes + " bytes");
    }
    this.store = Files.getFileStore(folder);
    this.reserveBytes = reserveBytes;
  }

  @Override
  public boolean nearlyFull() {
    long due = lookAgainAtNanos.get();
    long now = System.nanoTime();
    if (now - due >= 0 && lookAgainAtNanos.compareAndSet(due, now + LOOK_NANOS)) {
      look();
    }
    return nearlyFull;
  }

  private void look() {
    boolean was = nearlyFull;
    try {
      nearlyFull = store.getUsableSpace() < reserveBytes;
    } catch (IOException unknown) {
      LOG.warn("Cannot ask how much room is left on {}", store, unknown);
      nearlyFull = true;
    }
    if (nearlyFull && !was) {
      LOG.error("Less than {} MiB left on {}: nothing new is recorded", reserveBytes >> 20, store);
    } else if (was && !nearlyFull) {
      LOG.info("Room again on {}: recording goes on", store);
    }
  }
}
