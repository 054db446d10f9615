package dev.poleward.service.render;

/** Numbers of things in words. */
public final class Counted {

  private Counted() {}

  /**
   * "1 rep", "2 reps".
   *
   * @param one of them, a noun that takes an s
   */
  public static String of(long count, String one) {
    return count == 1 ? "1 " + one : count + " " + one + "s";
  }
}
