package dev.poleward.service.render;

import java.time.LocalDate;

/**
 * Whom a picture is of, and as of when.
 *
 * @param dog its id, which can be written with any letters
 * @param callName what it is called; what does not show in print is left out
 * @param agedTo the club's local day
 */
public record DogInPicture(String dog, String callName, LocalDate agedTo) {

  /** Makes the call name printable. */
  public DogInPicture {
    callName = PrintableName.of(callName, dog);
  }
}
