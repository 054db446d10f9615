package dev.poleward.service.access;

import com.google.crypto.tink.Aead;
import com.google.crypto.tink.DeterministicAead;
import dev.poleward.service.journal.CannotStart;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.GeneralSecurityException;

/**
 * The key under which people's keys are wrapped. It lives in a file outside the broker's data, so
 * that a copy of that data alone opens nothing. Immutable; safe for use by many threads.
 */
public final class MasterKey {

  private final SecretFile file;
  private final Aead cipher;

  private MasterKey(SecretFile file, Aead cipher) {
    this.file = file;
    this.cipher = cipher;
  }

  /** Whether a missing master key may be made. */
  public enum WhenMissing {
    /** There is no person's key yet, and no other node that may have made a master key. */
    CREATE,
    /** People's keys may be there already, and a new master key would open none of them. */
    REFUSE
  }

  /**
   * Reads the master key from its file.
   *
   * @throws CannotStart when it cannot be read or written, is missing without leave to make one, or
   *     is no master key
   */
  public static MasterKey open(Path path, WhenMissing whenMissing) {
    SecretFile file = new SecretFile("master key", path);
    String text =
        file.read()
            .orElseGet(
                () ->
                    switch (whenMissing) {
                      case CREATE -> file.create(drawn());
                      case REFUSE ->
                          throw file.fault(
                              "is missing, and without it no personal member can be read: copy it"
                                  + " from a backup or from another node");
                    });
    try {
      return new MasterKey(file, KeyCiphers.master(text));
    } catch (GeneralSecurityException e) {
      // Neither the text nor the cause goes into the message: both may hold parts of the key.
      throw file.fault("is not a master key: copy it from a backup or from another node");
    }
  }

  private static String drawn() {
    try {
      return KeyCiphers.newMasterKey();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("no key can be drawn", e);
    }
  }

  /** A new key for a person, wrapped. */
  String newKey(PersonKeyName name) {
    try {
      return KeyCiphers.newPersonKey(cipher, bound(name));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("no key can be wrapped", e);
    }
  }

  /**
   * The cipher of a wrapped key.
   *
   * @throws GeneralSecurityException when it was not wrapped by this key under that name
   */
  DeterministicAead unwrap(PersonKeyName name, String wrapped) throws GeneralSecurityException {
    return KeyCiphers.person(cipher, bound(name), wrapped);
  }

  /** The fault that this key is not the one that wrapped what is there. */
  CannotStart wrongKey() {
    return file.fault(
        "is not the one under which this record's personal members are sealed: copy that one from"
            + " a backup or from another node");
  }

  private static byte[] bound(PersonKeyName name) {
    return name.written().getBytes(StandardCharsets.UTF_8);
  }
}
