package dev.poleward.service.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The form in which a secret is kept: SHA-256 of its text, in hexadecimal. The secrets are random
 * numbers of 256 bits, which nobody can find by trying; so no slow hash is needed.
 */
final class SecretHash {

  private SecretHash() {}

  /** What is kept of a secret. */
  static String of(String secret) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
      return "sha256:" + HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Whether {@code hash} was made of {@code secret}; takes equally long wherever they differ. */
  static boolean matches(String secret, String hash) {
    return MessageDigest.isEqual(
        of(secret).getBytes(StandardCharsets.US_ASCII), hash.getBytes(StandardCharsets.UTF_8));
  }
}
