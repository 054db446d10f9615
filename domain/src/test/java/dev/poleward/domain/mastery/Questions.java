package dev.poleward.domain.mastery;

/** What tests ask. */
final class Questions {

  /** Of all reps, weighing all alike: four in five, by the profile. */
  static final MasteryQuestion ANY = with(LimitMethod.PROFILE);

  private Questions() {}

  static MasteryQuestion with(LimitMethod limits) {
    return new MasteryQuestion(null, 0.8, null, limits, Success.ENTRY, null, null, null, null);
  }

  static MasteryQuestion atLevel(double level) {
    return new MasteryQuestion(
        null, level, null, LimitMethod.PROFILE, Success.ENTRY, null, null, null, null);
  }

  static MasteryQuestion of(Success of) {
    return new MasteryQuestion(null, 0.8, null, LimitMethod.PROFILE, of, null, null, null, null);
  }

  static MasteryQuestion withHalfLife(double days) {
    return new MasteryQuestion(
        null, 0.8, days, LimitMethod.PROFILE, Success.ENTRY, null, null, null, null);
  }
}
