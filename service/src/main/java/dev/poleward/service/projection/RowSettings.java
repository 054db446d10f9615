package dev.poleward.service.projection;

/**
 * Bounds of the row store's memory, over everything that it holds.
 *
 * @param blockCacheBytes for blocks, indexes and filters; write buffers are charged to it too
 * @param writeBufferBytes for rows not yet in a file, of all kinds together
 * @param openFilesMax files held open at once
 */
public record RowSettings(long blockCacheBytes, long writeBufferBytes, int openFilesMax) {

  private static final long MIB = 1 << 20;

  /**
   * 96 MiB of cache, of which 32 MiB for write buffers, and 512 files. What is in write buffers at
   * a kill is read again from the log at the next start, so they are small.
   */
  public static final RowSettings DEFAULT = new RowSettings(96 * MIB, 32 * MIB, 512);

  /** Refuses what cannot work. */
  public RowSettings {
    if (blockCacheBytes < 8 * MIB || writeBufferBytes < 4 * MIB || openFilesMax < 16) {
      throw new IllegalArgumentException(
          "the row store needs 8 MiB of cache, 4 MiB of write buffers and 16 files at least");
    }
    if (writeBufferBytes > blockCacheBytes) {
      throw new IllegalArgumentException("write buffers are charged to the cache and must fit it");
    }
  }
}
