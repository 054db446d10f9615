package dev.poleward.domain.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
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
            + " few poles, few gaps, low bars, no sharp bends."
            + GROWTH,
        COMMON_PRACTICE);
  }

  static CareNote young(int months) {
    return new CareNote(
        "young",
        Severity.CAUTION,
        "The dog is younger than the club's "
            + months
            + " months and not cleared: few poles, few gaps, low bars, no sharp bends."
            + GROWTH,
        COMMON_PRACTICE);
  }

  private static final String GROWTH =
      " Growth plates close late and unevenly between breeds, and surveys disagree about early"
          + " weaving: a veterinarian decides."
          + " Your organisation's rules and local law come first.";

  static CareNote easingBack(EasedBack back) {
    return new CareNote(
        "easing-back",
        Severity.CAUTION,
        "The dog comes back from a rest: " + held(back) + ASK,
        COMMON_PRACTICE);
  }

  static CareNote easingBack(LongBreak pause, EasedBack back) {
    return new CareNote(
        "easing-back",
        Severity.CAUTION,
        "The dog comes back from a break: its last run before %s was %d days earlier, on %s. "
                .formatted(pause.back(), pause.days(), pause.lastRun())
            + "Begin easy, straight on and with few reps: "
            + held(back)
            + ASK,
        COMMON_PRACTICE);
  }

  private static String held(EasedBack back) {
    return "load is held to %d%%, sharp bends to %d%%, and both rise over the weeks that follow."
        .formatted(back.loadPercent(), back.sharpBendsPercent());
  }

  static CareNote clearedWithinLimits(List<String> limits) {
    return new CareNote(
        "cleared-within-limits",
        Severity.CAUTION,
        "The dog was cleared within limits (%s); they are kept to."
                .formatted(String.join(", ", limits))
            + ASK,
        COMMON_PRACTICE);
  }

  static CareNote dayIsFull(int gaps, int most) {
    return new CareNote(
        "day-is-full",
        Severity.STOP,
        "Today the dog passed %d gaps; its limit for a session is %d.".formatted(gaps, most) + ASK,
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

  /** Told last: {@code left} is what remains after heat and rest too. */
  static CareNote loadGrows(LoadSeen load, int left, Severity severity) {
    return new CareNote(
        "load-grows",
        severity,
        "In the last seven days the dog passed %d gaps; in the four weeks before it was %d a week. Load is raised little by little: the next session is held to %d gaps."
                .formatted(load.week().gaps(), Math.round(load.usualGaps()), left)
            + ASK,
        COMMON_PRACTICE);
  }

  static CareNote longerLine(int before, int now) {
    return new CareNote(
        "longer-line",
        Severity.CAUTION,
        "In the last seven days the line had up to %d poles, in the four weeks before up to %d: a rep is %s times the load."
                .formatted(now, before, times(before, now))
            + " Fewer reps make up for it."
            + ASK,
        COMMON_PRACTICE);
  }

  static CareNote longerLineAhead(UsualLine usual, int now) {
    return new CareNote(
        "longer-line-ahead",
        Severity.CAUTION,
        "In the five weeks up to its last run, on %s, the line had up to %d poles; this session has %d: a rep is %s times the load."
                .formatted(usual.lastRun(), usual.poles(), now, times(usual.poles(), now))
            + " Fewer reps make up for it."
            + ASK,
        "Arithmetic: n poles have n - 1 gaps.");
  }

  /** Not by {@code %.1f}, which would follow the language of the machine. */
  private static String times(int before, int now) {
    return String.format(Locale.ROOT, "%.1f", (now - 1.0) / (before - 1.0));
  }

  static CareNote haveItLookedAt(Set<Sign> signs) {
    List<String> seen = signs.stream().map(CareNotes::words).toList();
    return new CareNote(
        "have-it-looked-at",
        Severity.CAUTION,
        "Lately the dog "
            + String.join(", and ", seen)
            + ". Pain is one of the causes that this can have: have the dog looked at. Until it is"
            + " cleared, or the signs are gone, entries are straight on."
            + ASK,
        COMMON_PRACTICE);
  }

  private static String words(Sign sign) {
    return switch (sign) {
      case HOPPING -> "hops where it used to stride";
      case LESS_KEEN -> "is less keen than it was";
      case SLOWING -> "is slower through the poles than it was";
      case SLIPPING -> "misses what was solid, on several rungs at once";
    };
  }

  static CareNote warm() {
    return new CareNote("warm", Severity.NOTE, "Water and shade between turns." + HEAT, HEAT_INDEX);
  }

  static CareNote hot() {
    return new CareNote(
        "hot",
        Severity.CAUTION,
        "Warm for this dog: half the load, early or late in the day, water and shade." + HEAT,
        HEAT_INDEX);
  }

  static CareNote tooHot() {
    return new CareNote(
        "too-hot",
        Severity.STOP,
        "Too warm for this dog: no poles. If a dog pants hard, staggers or is dazed, cool it first,"
            + " then take it to a veterinarian."
            + HEAT,
        HEAT_INDEX);
  }

  private static final String HEAT = " No single cut-off exists: watch the dog." + ASK;

  private static final String HEAT_INDEX =
      "Heat index: Rothfusz 1990, US National Weather Service SR 90-23, made for people; its steps"
          + " for dogs are common practice.";

  static CareNote wetGround() {
    return new CareNote(
        "wet-ground",
        Severity.CAUTION,
        "The ground is wet and paws may slip: no sharp bends. Move the poles when the grass wears."
            + ASK,
        COMMON_PRACTICE);
  }

  static CareNote pressure() {
    return new CareNote(
        "pressure",
        Severity.NOTE,
        "Crowd the dog only where it is solid, and never in its line: it may run into you, and may"
            + " come to fear you. Left out of plans unless it is asked for.",
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
