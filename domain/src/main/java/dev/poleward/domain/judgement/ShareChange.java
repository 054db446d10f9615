package dev.poleward.domain.judgement;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;

/** By how much a share changed between two lots of reps. */
public final class ShareChange {

  private ShareChange() {}

  /**
   * The share after less the share before, −1 to 1, with limits from Wilson's of both (Newcombe
   * 1998, Statistics in Medicine 17:873, method 10). Where either is of none, the limits say so.
   */
  public static Estimate between(Proportion before, Proportion after, Confidence confidence) {
    Estimate was = before.wilson(confidence);
    Estimate is = after.wilson(confidence);
    double change = is.value() - was.value();
    return new Estimate(
        change,
        change - StrictMath.hypot(is.value() - is.lower(), was.upper() - was.value()),
        change + StrictMath.hypot(is.upper() - is.value(), was.value() - was.lower()));
  }
}
