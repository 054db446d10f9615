package dev.poleward.service.render;

import java.util.regex.Pattern;

/** Text as it can be set: what somebody typed may hold what no page and no picture can. */
public final class Printable {

  /**
   * What XML cannot hold or what would turn the text round it: control characters, marks of
   * direction, what is no character. White space of any length is one space.
   */
  private static final Pattern UNPRINTABLE =
      Pattern.compile("[\\p{Cc}\\p{Cn}\\p{Cs}\\u202A-\\u202E\\u2066-\\u2069\\p{Z}&&[^\\u00A0]]+");

  private Printable() {}

  /** The text without what cannot be set; may be empty. */
  public static String of(String text) {
    return UNPRINTABLE.matcher(text).replaceAll(" ").strip();
  }
}
