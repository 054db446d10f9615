package dev.poleward.service.http;

/** Numbers of reps in words. */
final class Reps {

  private Reps() {}

  /** "1 rep", "2 reps". */
  static String counted(long reps) {
    return reps == 1 ? "1 rep" : reps + " reps";
  }
}
