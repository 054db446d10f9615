package dev.poleward.domain.history;

import dev.poleward.domain.outlook.OutlookQuestion;
import dev.poleward.domain.outlook.OutlookTerms;
import dev.poleward.domain.outlook.Panel;
import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeDocument;
import dev.poleward.domain.record.DaySpan;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;

/** What the laws ask of what lies ahead and behind, of as few reps as are generated. */
final class AheadQuestions {

  static final LocalDate TODAY = LocalDate.parse("2026-03-02");
  static final Instant AGED_TO = Instant.parse("2026-03-03T00:00:00Z");

  /** So small and so lenient that a few reps get through. */
  static final Programme PROGRAMME = programme();

  static final Panel PANEL = Panel.of(PROGRAMME);

  static final DaySpan SPAN =
      new DaySpan(LocalDate.parse("2026-02-01"), LocalDate.parse("2026-03-31"), ZoneOffset.UTC);

  /** The day of all reps that are generated. */
  static final DaySpan DAY = new DaySpan(TODAY, TODAY, ZoneOffset.UTC);

  static final OutlookQuestion OF_ANY_REPS =
      new OutlookQuestion(
          TODAY, AGED_TO, 2.0, 2, new OutlookTerms(2, 1, Duration.ofDays(14), 10_000, 6, 1));

  private AheadQuestions() {}

  private static Programme programme() {
    Map<String, Object> stage =
        Map.of(
            "stage",
            "tunnel",
            "poles",
            4L,
            "leadIn",
            "tunnel",
            "entries",
            Map.of("clocks", List.of("12:00", "1:30", "10:30")),
            "handlings",
            List.of(Map.of("manoeuvre", "alongside")),
            "toleranceDegrees",
            15L,
            "rule",
            Map.of("method", "run", "length", 1L));
    Map<String, Object> document =
        Map.of("programme", "small", "name", "Small", "stages", List.of(stage));
    return switch (ProgrammeDocument.read(document)) {
      case Sound(Programme programme) -> programme;
      case Faulty faulty -> throw new AssertionError(faulty.faults());
    };
  }
}
