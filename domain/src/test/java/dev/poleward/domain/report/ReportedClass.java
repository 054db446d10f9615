package dev.poleward.domain.report;

import static dev.poleward.domain.history.Tell.barePoles;
import static dev.poleward.domain.history.Tell.classFormed;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.sessionOpened;

import dev.poleward.domain.care.CareLimits;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.event.SessionEvent.SessionClosed;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.history.Asked;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.MemoryFacts;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A class, {@code evening}, that is told of and reported. Day 0 is 4 May 2026; minute 0 of each day
 * is 17:00 UTC, and the club's days are those of UTC.
 */
final class ReportedClass {

  static final String EVENING = "evening";

  private static final int MINUTES_A_DAY = 24 * 60;
  private static final LocalDate FIRST = LocalDate.parse("2026-05-04");

  /** Four bare poles, five clean in a row move on. */
  private static final String PROGRAMME = "grid";

  private final List<Happening> told = new ArrayList<>();

  private ReportedClass() {}

  static ReportedClass reportedClass(Happening... happenings) {
    return new ReportedClass().and(happenings);
  }

  /** And then this, each on the day and at the minute that it says. */
  ReportedClass and(Happening... happenings) {
    told.addAll(List.of(happenings));
    return this;
  }

  /** A session of the class. */
  static Happening evening(String session) {
    return Happening.of(new SessionOpened(session, null, EVENING, null, null, null));
  }

  /** The class, and the programme {@code grid} with these stages. */
  static ReportedClass withGrid(List<Map<String, Object>> stages) {
    Map<String, Object> document =
        Map.of(
            "programme",
            PROGRAMME,
            "name",
            "Grid",
            "rule",
            Map.of("method", "run", "length", 5L),
            "stages",
            stages);
    return reportedClass(
        classFormed(EVENING).at(-9),
        sessionOpened("s-1").at(0),
        Happening.of(new ProgrammePublished(PROGRAMME, 1, document)).at(-8));
  }

  /** Alongside, from some clock positions. */
  static Map<String, Object> stage(String id, List<String> after, String... clocks) {
    return Map.of(
        "stage",
        id,
        "poles",
        4L,
        "leadIn",
        "none",
        "entries",
        Map.of("clocks", List.of(clocks)),
        "handlings",
        List.of(Map.of("manoeuvre", "alongside")),
        "prerequisites",
        after);
  }

  /** From a minute on a dog follows the grid. */
  static Happening follows(String dog, int minute) {
    return Happening.of(new ProgrammeAssigned(dog, PROGRAMME, null)).at(minute);
  }

  static Happening closed(String session) {
    return Happening.of(new SessionClosed(session));
  }

  /** The minute of a day. */
  static int on(int day, int minute) {
    return day * MINUTES_A_DAY + minute;
  }

  static LocalDate day(int day) {
    return FIRST.plusDays(day);
  }

  /** Reps of a dog over four bare poles at an angle, a minute each, from a minute of a day on. */
  ReportedClass ran(
      String dog, String session, int day, int minute, double degrees, int clean, int missed) {
    for (int i = 0; i < clean + missed; i++) {
      Outcome outcome = i < clean ? Outcome.CLEAN : Outcome.MISSED_ENTRY;
      told.add(
          rep(
                  "r-%s-%d-%d".formatted(dog, day, minute + i),
                  said -> said.by(dog).in(session).over(barePoles(4)).from(degrees).ended(outcome))
              .at(on(day, minute + i)));
    }
    return this;
  }

  /** The whole report of some days; all that was told is known. */
  ClassReport report(int from, int to) {
    return ClassReport.whole(EVENING, sources(from, to)).orElseThrow();
  }

  /** For somebody who sees some dogs. */
  ClassReport report(int from, int to, Predicate<String> shown) {
    return ClassReport.ofDogs(EVENING, sources(from, to), shown).orElseThrow();
  }

  /** The page of a dog in the whole report. */
  DogPage page(String dog, int from, int to) {
    return report(from, to).dogs().stream()
        .filter(page -> page.dog().equals(dog))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no page of " + dog));
  }

  ReportSources sources(int from, int to) {
    Told club = Told.given(told.toArray(Happening[]::new));
    // As the view of a report has it: what happened after the last day is not seen.
    Asked asked = club.whenAskedAsOf(on(to, 7 * 60) - 1);
    return new ReportSources(
        MemoryFacts.of(club.facts()),
        asked.placement(),
        asked.registry(),
        new DaySpan(day(from), day(to), ZoneOffset.UTC),
        CareLimits.USUAL,
        asked.placement()::ofDog,
        ExpectedRetention.USUAL);
  }
}
