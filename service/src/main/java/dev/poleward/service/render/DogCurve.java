package dev.poleward.service.render;

import dev.poleward.domain.mastery.MasteryCurve;
import java.time.LocalDate;

/**
 * What a picture of angle mastery is of.
 *
 * @param dog the dog's id, which can be written with any letters
 * @param callName what it is called; what does not show in print is left out
 * @param agedTo the club's local day
 */
public record DogCurve(String dog, String callName, LocalDate agedTo, MasteryCurve curve) {

  /** Makes the call name printable. */
  public DogCurve {
    callName = PrintableName.of(callName, dog);
  }
}
