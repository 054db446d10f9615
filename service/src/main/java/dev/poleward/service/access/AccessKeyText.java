package dev.poleward.service.access;

import dev.poleward.service.codec.Ids;
import java.util.Optional;

/**
 * An access key as its holder has it: {@code pw_<club>_<keyId>_<secret>}. A club's id may hold
 * underscores, key id and secret never do; so the parts are told from behind.
 *
 * @param club the club, or {@link #HOST} in the host key
 * @param secret 32 to 128 letters and digits
 */
public record AccessKeyText(String club, String keyId, String secret) {

  /** Stands for the club in the host key. A club of that name is possible all the same. */
  public static final String HOST = "host";

  private static final int LENGTH_MAX = 3 + 64 + 1 + 64 + 1 + 128;
  private static final int SECRET_BYTES = 32;
  private static final int KEY_ID_BYTES = 16;

  private static final String BEGINS = "pw_";
  private static final int SECRET_LENGTH_MIN = 32;
  private static final int SECRET_LENGTH_MAX = 128;

  /** A new key with that id. */
  static AccessKeyText drawn(String club, String keyId, Randomness randomness) {
    return new AccessKeyText(club, keyId, LettersAndDigits.random(randomness, SECRET_BYTES));
  }

  /** A new id for a key. */
  static String drawnKeyId(Randomness randomness) {
    return LettersAndDigits.random(randomness, KEY_ID_BYTES);
  }

  /** Whether that can be the id of a key: like other ids, but without underscores. */
  static boolean isKeyId(String text) {
    return Ids.isRecordedId(text) && text.indexOf('_') < 0;
  }

  /** Reads a key; empty when the text is none. */
  public static Optional<AccessKeyText> parse(String text) {
    if (text.length() > LENGTH_MAX || !text.startsWith(BEGINS)) {
      return Optional.empty();
    }
    int secretAt = text.lastIndexOf('_') + 1;
    int keyIdAt = text.lastIndexOf('_', secretAt - 2) + 1;
    if (keyIdAt <= BEGINS.length()) {
      return Optional.empty();
    }
    AccessKeyText read =
        new AccessKeyText(
            text.substring(BEGINS.length(), keyIdAt - 1),
            text.substring(keyIdAt, secretAt - 1),
            text.substring(secretAt));
    return Ids.isRecordedId(read.club) && isKeyId(read.keyId) && isSecret(read.secret)
        ? Optional.of(read)
        : Optional.empty();
  }

  private static boolean isSecret(String text) {
    return text.length() >= SECRET_LENGTH_MIN
        && text.length() <= SECRET_LENGTH_MAX
        && text.chars().allMatch(each -> Ids.isLetterOrDigit((char) each));
  }

  /** The key as its holder sends it. Not for logs. */
  public String written() {
    return BEGINS + club + '_' + keyId + '_' + secret;
  }

  /** Without the secret, so that a log can never hold it. */
  @Override
  public String toString() {
    return BEGINS + club + '_' + keyId + "_…";
  }
}
