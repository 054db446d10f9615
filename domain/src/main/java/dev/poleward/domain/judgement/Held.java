package dev.poleward.domain.judgement;

import dev.poleward.domain.mastery.Estimate;

/** Whether success held from one step of a ladder to the next. */
public enum Held {
  /** Surely, but for a fall that would not matter. */
  YES,
  /** It surely fell. */
  NO,
  /** Too few reps to say either. */
  CANNOT_TELL;

  /**
   * What a change of a share says.
   *
   * @param change with its limits
   * @param small a fall that does not matter, above 0
   */
  static Held of(Estimate change, double small) {
    if (change.upper() < 0) {
      return NO;
    }
    return change.lower() >= -small ? YES : CANNOT_TELL;
  }
}
