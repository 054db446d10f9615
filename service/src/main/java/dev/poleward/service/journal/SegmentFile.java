package dev.poleward.service.journal;

import java.io.IOException;
import java.lang.foreign.Arena;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * One file of record batches, read from its first byte to its last.
 *
 * @param path the file
 * @param rules what it has to keep to
 */
record SegmentFile(Path path, Rules rules) {

  /** A torn batch is one append's, so no longer than this, in bytes. */
  private static final int TORN_BYTES_MAX = KafkaJournal.ENTRY_BYTES_MAX + (1 << 20);

  /**
   * What a file has to keep to.
   *
   * @param offsetsLeaveNoGap whether each offset follows the one before; not so after compaction
   * @param mayEndTorn whether a batch may be missing its end: only in the file that was written
   *     last, and only after a kill
   * @param epochs of which leaders the batches can be
   */
  record Rules(boolean offsetsLeaveNoGap, boolean mayEndTorn, LeaderEpochs epochs) {}

  /** What the reading found. */
  sealed interface Finding {

    /** All is well. */
    record Whole(long nextOffset) implements Finding {}

    /**
     * All is well up to the last append, which was never finished, and so never acknowledged.
     *
     * @param position where it begins, in bytes
     * @param bytes what there is of it
     */
    record Torn(long nextOffset, long position, long bytes) implements Finding {}

    /**
     * A batch is not as it was written.
     *
     * @param offset its first offset, as it ought to be
     * @param position where it begins, in bytes
     */
    record Bad(long offset, long position, String why) implements Finding {}
  }

  /**
   * Reads the file.
   *
   * @param offset that of its first record, or the least it can be where gaps are allowed
   * @throws IOException when the file cannot be opened
   */
  Finding read(long offset) throws IOException {
    try (var channel = FileChannel.open(path, StandardOpenOption.READ);
        var arena = Arena.ofConfined()) {
      long size = channel.size();
      if (size == 0) {
        return new Finding.Whole(offset);
      }
      if (size > Integer.MAX_VALUE) {
        return new Finding.Bad(offset, 0, "the file is too large");
      }
      var mapped = channel.map(FileChannel.MapMode.READ_ONLY, 0, size, arena);
      return read(mapped.asByteBuffer(), offset);
    } catch (InternalError unreadable) {
      // How a mapped page that the disk cannot deliver comes to light.
      throw new IOException(path + " cannot be read from the disk", unreadable);
    }
  }

  private Finding read(ByteBuffer file, long firstOffset) {
    long next = firstOffset;
    int at = 0;
    while (at < file.limit()) {
      int left = file.limit() - at;
      if (left < BatchHeader.BYTES
          || BatchHeader.length(file, at) < BatchHeader.LENGTH_MIN
          || BatchHeader.size(file, at) > left) {
        return incomplete(file, at, next);
      }
      int size = (int) BatchHeader.size(file, at);
      var why = fault(file, at, size, next);
      if (why != null) {
        return new Finding.Bad(next, at, why);
      }
      next = BatchHeader.baseOffset(file, at) + BatchHeader.lastOffsetDelta(file, at) + 1;
      at += size;
    }
    return new Finding.Whole(next);
  }

  private @Nullable String fault(ByteBuffer file, int at, int size, long expected) {
    if (BatchHeader.format(file, at) != BatchHeader.FORMAT) {
      return "its format is not " + BatchHeader.FORMAT;
    }
    if (!BatchHeader.isIntact(file, at, size)) {
      return "its checksum does not fit";
    }
    long base = BatchHeader.baseOffset(file, at);
    int delta = BatchHeader.lastOffsetDelta(file, at);
    if (rules.offsetsLeaveNoGap) {
      if (base != expected) {
        return "it begins with offset " + base;
      }
      if (BatchHeader.count(file, at) != delta + 1) {
        return "its offsets have a gap";
      }
    } else if (base < expected) {
      return "it begins with offset " + base;
    }
    if (delta < 0) {
      return "its offsets run backwards";
    }
    int epoch = BatchHeader.leaderEpoch(file, at);
    if (!rules.epochs.fit(base, epoch)) {
      return "it claims leader epoch " + epoch;
    }
    return null;
  }

  /** The bytes from here on are less than a batch, or its length is wrong. */
  private Finding incomplete(ByteBuffer file, int at, long next) {
    int left = file.limit() - at;
    if (!rules.mayEndTorn) {
      return new Finding.Bad(next, at, "it is not all there");
    }
    if (left > TORN_BYTES_MAX) {
      return new Finding.Bad(next, at, "its length is wrong");
    }
    if (isAllZero(file, at) || isTorn(file, at, next)) {
      return new Finding.Torn(next, at, left);
    }
    return new Finding.Bad(next, at, "its length is wrong");
  }

  /**
   * Whether an append ended here before its time. Not so when the bytes would be a whole batch if
   * only its length were another, or when a whole batch comes later: then the length is damaged,
   * and what follows was acknowledged.
   */
  private boolean isTorn(ByteBuffer file, int at, long next) {
    int left = file.limit() - at;
    if (left >= Long.BYTES
        && (BatchHeader.baseOffset(file, at) < next
            || (rules.offsetsLeaveNoGap && BatchHeader.baseOffset(file, at) != next))) {
      return false;
    }
    if (left >= BatchHeader.BEFORE_LENGTH_COUNTS
        && (BatchHeader.length(file, at) < BatchHeader.LENGTH_MIN
            || BatchHeader.size(file, at) > TORN_BYTES_MAX)) {
      return false;
    }
    if (left < BatchHeader.BYTES) {
      return true;
    }
    return BatchHeader.format(file, at) == BatchHeader.FORMAT
        && !BatchHeader.isIntact(file, at, left)
        && !isFollowedByABatch(file, at, next);
  }

  private static boolean isFollowedByABatch(ByteBuffer file, int after, long next) {
    for (int at = after + 1; at <= file.limit() - BatchHeader.BYTES; at++) {
      if (BatchHeader.format(file, at) == BatchHeader.FORMAT
          && BatchHeader.baseOffset(file, at) > next
          && BatchHeader.length(file, at) >= BatchHeader.LENGTH_MIN
          && BatchHeader.size(file, at) <= file.limit() - at
          && BatchHeader.isIntact(file, at, (int) BatchHeader.size(file, at))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAllZero(ByteBuffer file, int from) {
    for (int at = from; at < file.limit(); at++) {
      if (file.get(at) != 0) {
        return false;
      }
    }
    return true;
  }
}
