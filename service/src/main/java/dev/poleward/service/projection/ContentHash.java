package dev.poleward.service.projection;

import dev.poleward.domain.record.Sealed;
import dev.poleward.service.journal.Entry;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * By which the content of two events under one id is compared: equal type, equal instant, equal RFC
 * 8785 data, and equal personal members, as far as their sealed form tells.
 *
 * <p>Sixteen bytes for what is not personal, sixteen for what is. The sealed form of equal members
 * of one event is equal while the person's key lives. Once the person is forgotten their members
 * are dropped at the door and marked so; those are not compared.
 */
public final class ContentHash {

  private static final int HALF = 16;
  private static final byte[] NOTHING_PERSONAL = new byte[HALF];
  private static final byte[] DROPPED = filled((byte) 0xff);

  private ContentHash() {}

  /** The hash of an event's content, 32 bytes. */
  public static byte[] of(Entry entry) {
    String plain = entry.type() + '\n' + entry.envelope().time().toInstant() + '\n' + entry.data();
    byte[] hash = Arrays.copyOf(sha256(plain), 2 * HALF);
    System.arraycopy(personal(entry.sealed()), 0, hash, HALF, HALF);
    return hash;
  }

  private static byte[] personal(@Nullable Sealed sealed) {
    if (sealed == null) {
      return NOTHING_PERSONAL;
    }
    return sealed.isDropped() ? DROPPED : sha256(sealed.box());
  }

  /** Whether two hashes stand for the same content. */
  static boolean same(byte[] one, byte[] other) {
    return Arrays.equals(one, 0, HALF, other, 0, HALF)
        && (Arrays.equals(one, HALF, 2 * HALF, other, HALF, 2 * HALF)
            || dropped(one)
            || dropped(other));
  }

  private static boolean dropped(byte[] hash) {
    return Arrays.equals(hash, HALF, 2 * HALF, DROPPED, 0, HALF);
  }

  private static byte[] filled(byte value) {
    byte[] bytes = new byte[HALF];
    Arrays.fill(bytes, value);
    return bytes;
  }

  private static byte[] sha256(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
