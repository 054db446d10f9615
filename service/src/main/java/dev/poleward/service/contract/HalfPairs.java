package dev.poleward.service.contract;

/**
 * Finds escapes that spell half a surrogate pair: legal in JSON, but no text that could be written
 * as UTF-8 again.
 */
final class HalfPairs {

  private static final int NONE = -1;
  private static final int ESCAPE_LENGTH = 6;

  private HalfPairs() {}

  /** Where the first such escape begins; negative when there is none. */
  static int first(String text) {
    int at = text.indexOf('\\');
    while (at >= 0) {
      int unit = unit(text, at);
      int next = at + (unit == NONE ? 2 : ESCAPE_LENGTH);
      if (unit != NONE && Character.isSurrogate((char) unit)) {
        int other = unit(text, next);
        if (!Character.isHighSurrogate((char) unit)
            || other == NONE
            || !Character.isLowSurrogate((char) other)) {
          return at;
        }
        next += ESCAPE_LENGTH;
      }
      at = text.indexOf('\\', next);
    }
    return NONE;
  }

  /** The UTF-16 unit that an escape at {@code at} spells; negative when there is no such escape. */
  private static int unit(String text, int at) {
    if (!text.startsWith("\\u", at) || at + ESCAPE_LENGTH > text.length()) {
      return NONE;
    }
    int unit = 0;
    for (int i = at + 2; i < at + ESCAPE_LENGTH; i++) {
      int digit = Character.digit(text.charAt(i), 16);
      if (digit < 0) {
        return NONE;
      }
      unit = unit * 16 + digit;
    }
    return unit;
  }
}
