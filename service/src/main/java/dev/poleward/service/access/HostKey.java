package dev.poleward.service.access;

import dev.poleward.service.journal.CannotStart;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;

/** The key of whoever runs the service. Immutable; safe for use by many threads. */
public final class HostKey {

  private final AccessKeyText text;

  private HostKey(AccessKeyText text) {
    this.text = text;
  }

  /**
   * Reads the key from its file; where there is no file, draws a key and writes it, with nothing
   * else, for the owner's eyes only.
   *
   * @throws CannotStart when the file cannot be read or written, or holds no host key
   */
  public static HostKey open(Path file, Randomness randomness) {
    SecretFile secret = new SecretFile("host key", file);
    String written =
        secret
            .read()
            .orElseGet(
                () -> {
                  String keyId = AccessKeyText.drawnKeyId(randomness);
                  return secret.create(
                      AccessKeyText.drawn(AccessKeyText.HOST, keyId, randomness).written());
                });
    return AccessKeyText.parse(written)
        .filter(text -> text.club().equals(AccessKeyText.HOST))
        .map(HostKey::new)
        .orElseThrow(
            () ->
                secret.fault(
                    "does not hold a host key (pw_host_<id>_<secret>); restore it, or remove it and"
                        + " a new key is made"));
  }

  /** Whether that is this key; takes equally long wherever they differ. */
  boolean is(AccessKeyText other) {
    return MessageDigest.isEqual(bytes(text), bytes(other));
  }

  private static byte[] bytes(AccessKeyText text) {
    return text.written().getBytes(StandardCharsets.US_ASCII);
  }

  /** Without the secret. */
  @Override
  public String toString() {
    return text.toString();
  }
}
