package dev.poleward.service.journal;

/** The service must not start; says in words for an operator why, and what to do. */
public final class CannotStart extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Says why, where, and what to do. */
  public CannotStart(String words) {
    super(words);
  }

  /** Says why, where, and what to do, and what caused it. */
  public CannotStart(String words, Throwable cause) {
    super(words, cause);
  }
}
