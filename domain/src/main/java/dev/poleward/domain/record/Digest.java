package dev.poleward.domain.record;

import dev.poleward.domain.event.ClubEvent;
import dev.poleward.domain.event.TrainingEvent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;

/**
 * Fingerprint of a record: two records agree exactly when their digests do. SHA-256 over one line
 * an event, {@code id type time data} with single spaces and a line feed, in ascending order of
 * ids. For one thread.
 */
public final class Digest {

  private final MessageDigest sha256;
  private String last = "";
  private long events;

  /** A digest of nothing yet. */
  public Digest() {
    try {
      sha256 = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Whether a digest takes notice of such an event: not of clubs, keys and people. */
  public static boolean covers(TrainingEvent event) {
    return !(event instanceof ClubEvent);
  }

  /**
   * Adds an event.
   *
   * @param id above every id added before: a space sorts below every character of an id, so that
   *     ids in ascending order are lines in ascending order
   * @param data RFC 8785 form of its data, without personal members
   */
  public void add(String id, String type, Instant time, String data) {
    if (id.compareTo(last) <= 0) {
      throw new IllegalArgumentException("ids must ascend: " + id + " after " + last);
    }
    last = id;
    events++;
    sha256.update(
        (id + ' ' + type + ' ' + written(time) + ' ' + data + '\n')
            .getBytes(StandardCharsets.UTF_8));
  }

  /** RFC 3339 in UTC with the shortest fraction: {@code 2026-05-04T17:02:11.5Z}. */
  static String written(Instant time) {
    String text = time.toString();
    int point = text.indexOf('.');
    if (point < 0) {
      return text;
    }
    int end = text.length() - 1;
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, end) + 'Z';
  }

  /** How many events were added. */
  public long events() {
    return events;
  }

  /** The fingerprint, {@code sha256:} and 64 hexadecimal digits. Ends this digest. */
  public String value() {
    return "sha256:" + HexFormat.of().formatHex(sha256.digest());
  }
}
