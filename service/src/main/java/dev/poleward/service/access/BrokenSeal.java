package dev.poleward.service.access;

/**
 * Sealed members that were not sealed like this: the record, a person's key or the master key was
 * changed behind our back. Never carries plaintext.
 */
public final class BrokenSeal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Says where. */
  BrokenSeal(String message, Throwable cause) {
    super(message, cause);
  }
}
