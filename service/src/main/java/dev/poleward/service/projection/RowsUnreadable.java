package dev.poleward.service.projection;

/** Rows cannot be read or written; nothing is lost, they are rebuilt from the journal. */
public final class RowsUnreadable extends RuntimeException {

  private static final long serialVersionUID = 1L;

  RowsUnreadable(String message, Throwable cause) {
    super(message, cause);
  }
}
