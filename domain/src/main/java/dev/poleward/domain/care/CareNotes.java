package dev.poleward.domain.care;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** All notes, so that their texts can be read and mended together. */
final class CareNotes {

  private static final String COMMON_PRACTICE = "Common practice; no source.";

  private static final String ASK =
      " Ask your veterinarian; your organisation's rules and local law come first.";

  private CareNotes() {}

  static CareNote resting(@Nullable String reason, @Nullable LocalDate until) {
    return new CareNote(
        "resting",
        Severity.STOP,
        "The dog is resting"
            + (until == null ? " until it is cleared" : " until " + until)
            + (reason == null ? "" : " (" + reason + ")")
            + ": no poles."
            + ASK,
        COMMON_PRACTICE);
  }

  static CareNote ageUnknown() {
    return new CareNote(
        "age-unknown",
        Severity.CAUTION,
        "Nobody said when the dog was born, so it is treated as a young one until it is cleared:"
            + " few poles, few gaps, no sharp bends."
            + GROWTH,
        COMMON_PRACTICE);
  }

  static CareNote young(int months) {
    return new CareNote(
        "young",
        Severity.CAUTION,
        "The dog is younger than the club's "
            + months
            + " months and not cleared: few poles, few gaps, no sharp bends."
            + GROWTH,
        COMMON_PRACTICE);
  }

  private static final String GROWTH =
      " Growth plates close late and unevenly between breeds, and surveys disagree about early"
          + " weaving: a veterinarian decides."
          + " Your organisation's rules and local law come first.";

  static CareNote easingBack(int percent) {
    return new CareNote(
        "easing-back",
        Severity.CAUTION,
        "The dog comes back from a rest: load is held to "
            + percent
            + "% and rises over the weeks that follow."
            + ASK,
        COMMON_PRACTICE);
  }

  static CareNote weekIsFull(int gaps, int most) {
    return new CareNote(
        "week-is-full",
        Severity.STOP,
        "In the last seven days the dog passed %d gaps; the club's limit is %d."
                .formatted(gaps, most)
            + ASK,
        COMMON_PRACTICE);
  }

  static CareNote manySessions(int sessions) {
    return new CareNote(
        "many-sessions",
        Severity.NOTE,
        "%d sessions in the last seven days. More than two a week is commoner among injured dogs: an association, not a cause."
                .formatted(sessions)
            + ASK,
        "Inkilä et al. 2022, Animals 12(3):227");
  }

  static CareNote alternateSides() {
    return new CareNote(
        "alternate-sides",
        Severity.NOTE,
        "Alternate the entry sides: the outer limbs carry the higher peak force.",
        "Ramsey, Blake 2026, six poles");
  }
}
