package dev.poleward.service.codec;

import java.util.regex.Pattern;

/** What an id of a club, a dog, a rep, an event may look like. */
public final class Ids {

  private static final Pattern ID = Pattern.compile("[A-Za-z0-9._~-]{1,64}");

  private Ids() {}

  /** Whether a text is an id. */
  public static boolean isId(String text) {
    return ID.matcher(text).matches();
  }
}
