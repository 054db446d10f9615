package dev.poleward.service.access;

import com.google.crypto.tink.Aead;
import com.google.crypto.tink.DeterministicAead;
import com.google.crypto.tink.InsecureSecretKeyAccess;
import com.google.crypto.tink.KeysetHandle;
import com.google.crypto.tink.RegistryConfiguration;
import com.google.crypto.tink.TinkProtoKeysetFormat;
import com.google.crypto.tink.aead.AeadConfig;
import com.google.crypto.tink.aead.PredefinedAeadParameters;
import com.google.crypto.tink.daead.DeterministicAeadConfig;
import com.google.crypto.tink.daead.PredefinedDeterministicAeadParameters;
import java.security.GeneralSecurityException;
import java.util.Base64;

/**
 * The two ciphers, and the one place that knows the library they come from: AES-256-GCM wraps keys,
 * AES-256-SIV (RFC 5297) seals members.
 */
final class KeyCiphers {

  static {
    try {
      AeadConfig.register();
      DeterministicAeadConfig.register();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("the ciphers cannot be set up", e);
    }
  }

  private KeyCiphers() {}

  /** A new master key, base64url. */
  static String newMasterKey() throws GeneralSecurityException {
    KeysetHandle key = KeysetHandle.generateNew(PredefinedAeadParameters.AES256_GCM);
    return text(TinkProtoKeysetFormat.serializeKeyset(key, InsecureSecretKeyAccess.get()));
  }

  /** The cipher of a master key. */
  static Aead master(String key) throws GeneralSecurityException {
    return TinkProtoKeysetFormat.parseKeyset(bytes(key), InsecureSecretKeyAccess.get())
        .getPrimitive(RegistryConfiguration.get(), Aead.class);
  }

  /**
   * A new key of a person, wrapped, base64url.
   *
   * @param name bound to the key: under another name it cannot be unwrapped
   */
  static String newPersonKey(Aead master, byte[] name) throws GeneralSecurityException {
    KeysetHandle key = KeysetHandle.generateNew(PredefinedDeterministicAeadParameters.AES256_SIV);
    return text(TinkProtoKeysetFormat.serializeEncryptedKeyset(key, master, name));
  }

  /** The cipher of a person's wrapped key. */
  static DeterministicAead person(Aead master, byte[] name, String wrapped)
      throws GeneralSecurityException {
    return TinkProtoKeysetFormat.parseEncryptedKeyset(bytes(wrapped), master, name)
        .getPrimitive(RegistryConfiguration.get(), DeterministicAead.class);
  }

  static String text(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  static byte[] bytes(String text) throws GeneralSecurityException {
    try {
      return Base64.getUrlDecoder().decode(text);
    } catch (IllegalArgumentException e) {
      throw new GeneralSecurityException("no base64url", e);
    }
  }
}
