package dev.poleward.service.codec;

/**
 * What an id of a club, a dog, a rep, an event may look like: 1 to 64 of A-Z a-z 0-9 . _ ~ -, and
 * neither of the steps {@code .} and {@code ..} that clients take out of paths.
 */
public final class Ids {

  private static final int LENGTH_MAX = 64;

  private Ids() {}

  /** Whether a text is an id. Every request and every event asks for several. */
  public static boolean isId(String text) {
    return isRecordedId(text) && !text.equals(".") && !text.equals("..");
  }

  /** Whether a text may be the id of something recorded: once the two steps could be. */
  public static boolean isRecordedId(String text) {
    if (text.isEmpty() || text.length() > LENGTH_MAX) {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      char each = text.charAt(i);
      if (!isLetterOrDigit(each) && each != '.' && each != '_' && each != '~' && each != '-') {
        return false;
      }
    }
    return true;
  }

  /** Whether it is one of A-Z a-z 0-9, and of no other alphabet. */
  public static boolean isLetterOrDigit(char each) {
    return (each >= 'a' && each <= 'z')
        || (each >= 'A' && each <= 'Z')
        || (each >= '0' && each <= '9');
  }
}
