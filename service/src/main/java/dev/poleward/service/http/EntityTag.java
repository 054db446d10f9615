package dev.poleward.service.http;

import dev.poleward.service.access.Authentication.Identity;
import dev.poleward.service.access.ClubIdentity;
import dev.poleward.service.access.HostIdentity;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Entity tags (RFC 9110, 8.8.3): whether what a client has is still what it would get. All are
 * weak: the same answer goes out compressed or plain, and a strong tag would call those bytes the
 * same.
 */
final class EntityTag {

  private static final int CONTENT_BYTES = 16;
  private static final int QUESTION_BYTES = 8;

  private EntityTag() {}

  private static final String WEAK = "W/";

  /** Whether the client has this already. Compared weakly, as If-None-Match asks. */
  static boolean matches(Call call, String tag) {
    String has = call.header("If-None-Match").orElse("");
    for (String each : has.split(",", -1)) {
      String one = each.trim();
      if (opaque(tag).equals(opaque(one))) {
        return true;
      }
    }
    return false;
  }

  private static String opaque(String tag) {
    return tag.startsWith(WEAK) ? tag.substring(WEAK.length()) : tag;
  }

  private static String weak(String opaque) {
    return WEAK + '"' + opaque + '"';
  }

  /** 304 in place of an answer for a client that has one, whichever: {@code If-None-Match: *}. */
  static Answer unlessAny(Call call, Answer answer) {
    boolean any = call.header("If-None-Match").orElse("").trim().equals("*");
    String tag = answer.headers().get("ETag");
    return any && answer.status() == 200 && tag != null ? on(Answer.notModified(), tag) : answer;
  }

  /**
   * A tag for a question that somebody asks at a position of the club. It matches only where the
   * same was asked by the same at the same position, and answered; so the answer need not be made
   * again to know that it is unchanged.
   *
   * @param besides what the answer follows from besides the question and the position; may be empty
   */
  static String ofQuestion(Call call, Identity identity, long position, String besides) {
    String asker =
        switch (identity) {
          case HostIdentity _ -> "";
          case ClubIdentity key -> '\n' + key.key();
        };
    // Neither a question nor a key has a line feed, so the parts cannot be taken for each other.
    String asked = call.form() + '\n' + call.question() + asker + "\n\n" + besides;
    byte[] hash = sha256(asked.getBytes(StandardCharsets.UTF_8));
    return weak(position + "-" + HexFormat.of().formatHex(hash, 0, QUESTION_BYTES));
  }

  /** Marks what can be asked for again; refusals are left as they are. */
  static Answer on(Answer answer, String tag) {
    if (answer.status() != 200 && answer.status() != 304) {
      return answer;
    }
    return answer
        .with("ETag", tag)
        .with("Cache-Control", "private, no-cache")
        .with("Vary", "Accept, Accept-Encoding, Authorization");
  }

  /** A tag that follows from the answer alone. */
  static String ofContent(Answer answer) {
    return weak(HexFormat.of().formatHex(sha256(answer.body()), 0, CONTENT_BYTES));
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
