package dev.poleward.service.journal;

/** The journal is broken or out of reach. */
public final class JournalException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Says what is wrong in words for an operator. */
  public JournalException(String message) {
    super(message);
  }

  /** Says what is wrong in words for an operator, and what caused it. */
  public JournalException(String message, Throwable cause) {
    super(message, cause);
  }
}
