package dev.poleward.service.journal;

import java.nio.ByteBuffer;
import java.util.zip.CRC32C;

/**
 * Kafka's record batch, format 2, as it lies in a file: the fields that a check needs, at a
 * position.
 *
 * <pre>
 * 0 base offset (8)   8 length of what follows (4)   12 leader epoch (4)   16 format (1)
 * 17 CRC-32C of all after it (4)   21 attributes (2)   23 last offset delta (4)   …   57 count (4)
 * </pre>
 */
final class BatchHeader {

  /** Bytes of a batch before its records. */
  static final int BYTES = 61;

  /** The smallest value of the length field that leaves room for the header. */
  static final int LENGTH_MIN = BYTES - BatchHeader.BEFORE_LENGTH_COUNTS;

  static final int BEFORE_LENGTH_COUNTS = 12;
  static final byte FORMAT = 2;

  private static final int LENGTH_AT = 8;
  private static final int EPOCH_AT = 12;
  private static final int FORMAT_AT = 16;
  private static final int CRC_AT = 17;
  private static final int CHECKED_FROM = 21;
  private static final int LAST_DELTA_AT = 23;
  private static final int COUNT_AT = 57;

  private BatchHeader() {}

  static long baseOffset(ByteBuffer file, int at) {
    return file.getLong(at);
  }

  static int length(ByteBuffer file, int at) {
    return file.getInt(at + LENGTH_AT);
  }

  /** Size of the whole batch as its header says, in bytes. */
  static long size(ByteBuffer file, int at) {
    return (long) BEFORE_LENGTH_COUNTS + length(file, at);
  }

  static int leaderEpoch(ByteBuffer file, int at) {
    return file.getInt(at + EPOCH_AT);
  }

  static byte format(ByteBuffer file, int at) {
    return file.get(at + FORMAT_AT);
  }

  static int lastOffsetDelta(ByteBuffer file, int at) {
    return file.getInt(at + LAST_DELTA_AT);
  }

  static int count(ByteBuffer file, int at) {
    return file.getInt(at + COUNT_AT);
  }

  /** Whether the checksum is right for a batch of this many bytes, at least {@link #BYTES}. */
  static boolean isIntact(ByteBuffer file, int at, int size) {
    var crc = new CRC32C();
    crc.update(file.duplicate().limit(at + size).position(at + CHECKED_FROM));
    return (int) crc.getValue() == file.getInt(at + CRC_AT);
  }
}
