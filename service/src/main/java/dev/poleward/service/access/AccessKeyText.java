package dev.poleward.service.access;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

  private static final String KEY_ID = "[A-Za-z0-9.~-]{1,64}";
  private static final Pattern KEY_ID_FORM = Pattern.compile(KEY_ID);
  private static final Pattern FORM =
      Pattern.compile("pw_([A-Za-z0-9._~-]{1,64})_(" + KEY_ID + ")_([A-Za-z0-9]{32,128})");

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
    return KEY_ID_FORM.matcher(text).matches();
  }

  /** Reads a key; empty when the text is none. */
  public static Optional<AccessKeyText> parse(String text) {
    if (text.length() > LENGTH_MAX) {
      return Optional.empty();
    }
    Matcher parts = FORM.matcher(text);
    return parts.matches()
        ? Optional.of(new AccessKeyText(parts.group(1), parts.group(2), parts.group(3)))
        : Optional.empty();
  }

  /** The key as its holder sends it. Not for logs. */
  public String written() {
    return "pw_" + club + '_' + keyId + '_' + secret;
  }

  /** Without the secret, so that a log can never hold it. */
  @Override
  public String toString() {
    return "pw_" + club + '_' + keyId + "_…";
  }
}
