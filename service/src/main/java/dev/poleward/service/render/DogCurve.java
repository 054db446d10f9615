package dev.poleward.service.render;

import dev.poleward.domain.mastery.MasteryCurve;
import java.time.LocalDate;
import java.util.regex.Pattern;

/**
 * What a picture of angle mastery is of.
 *
 * @param dog the dog's id, which can be written with any letters
 * @param callName what it is called; what does not show in print is left out
 * @param agedTo the club's local day
 */
public record DogCurve(String dog, String callName, LocalDate agedTo, MasteryCurve curve) {

  /**
   * What XML cannot hold or what would turn the text round it: control characters, marks of
   * direction, what is no character. White space of any length is one space.
   */
  private static final Pattern UNPRINTABLE =
      Pattern.compile("[\\p{Cc}\\p{Cn}\\u202A-\\u202E\\u2066-\\u2069\\p{Z}]+");

  /** Makes the call name printable. */
  public DogCurve {
    String printable = UNPRINTABLE.matcher(callName).replaceAll(" ").strip();
    callName = printable.isEmpty() ? dog : printable;
  }
}
